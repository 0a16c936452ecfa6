import type { Command, ExitCode } from "./command";
import { didYouMean } from "./nearest-word";
import type { Streams } from "./streams";

const SHELLS = ["bash", "zsh", "powershell"] as const;
type Shell = (typeof SHELLS)[number];

/** Prints a script that completes the words of the commands in a shell; 2 for a shell that is not known. */
export function completion(
  shell: string | undefined,
  commands: readonly Command[],
  streams: Streams,
): ExitCode {
  const known = SHELLS.find((one) => one === shell);
  if (known === undefined) {
    const hint = shell === undefined ? "" : ` "${shell}"${didYouMean(shell, SHELLS)}`;
    streams.note(`barwright completion: name a shell, ${SHELLS.join(", ")}${hint && `; not${hint}`}`);
    return 2;
  }
  const words = Object.fromEntries(
    commands.map(({ name, options }) => [name, Object.keys(options).map((option) => `--${option}`)]),
  );
  for (const line of SCRIPTS[known](words)) streams.result(line);
  return 0;
}

type Words = Readonly<Record<string, readonly string[]>>;

const SCRIPTS: Readonly<Record<Shell, (words: Words) => string[]>> = {
  bash: (words) => [
    '# put this line into ~/.bashrc: eval "$(barwright completion bash)"',
    "_barwright() {",
    // biome-ignore lint/suspicious/noTemplateCurlyInString: the shell's own
    '  local word="${COMP_WORDS[COMP_CWORD]}"',
    `  if [ "$COMP_CWORD" -eq 1 ]; then COMPREPLY=($(compgen -W "${Object.keys(words).join(" ")}" -- "$word")); return; fi`,
    '  local options=""',
    // biome-ignore lint/suspicious/noTemplateCurlyInString: the shell's own
    '  case "${COMP_WORDS[1]}" in',
    ...Object.entries(words).map(([name, options]) => `    ${name}) options="${options.join(" ")}" ;;`),
    "  esac",
    '  if [[ "$word" == -* ]]; then COMPREPLY=($(compgen -W "$options" -- "$word")); else COMPREPLY=($(compgen -f -- "$word")); fi',
    "}",
    "complete -F _barwright barwright",
  ],
  zsh: (words) => [
    '# put this line into ~/.zshrc: eval "$(barwright completion zsh)"',
    "_barwright() {",
    `  if (( CURRENT == 2 )); then compadd -- ${Object.keys(words).join(" ")}; return; fi`,
    '  case "$words[2]" in',
    ...Object.entries(words).map(
      ([name, options]) =>
        `    ${name}) [[ "$PREFIX" == -* ]] && compadd -- ${options.join(" ")} || _files ;;`,
    ),
    "  esac",
    "}",
    "compdef _barwright barwright",
  ],
  powershell: (words) => [
    "# put this line into your $PROFILE: barwright completion powershell | Out-String | Invoke-Expression",
    "Register-ArgumentCompleter -Native -CommandName barwright -ScriptBlock {",
    "  param($word, $ast, $place)",
    "  $options = @{",
    ...Object.entries(words).map(
      ([name, options]) => `    '${name}' = @(${options.map((option) => `'${option}'`).join(", ")})`,
    ),
    "  }",
    "  $parts = @($ast.CommandElements | ForEach-Object { $_.ToString() })",
    "  $isFirst = $parts.Count -lt 2 -or ($parts.Count -eq 2 -and $word -ne '')",
    "  $offered = if ($isFirst) { $options.Keys | Sort-Object } else { $options[$parts[1]] }",
    '  $offered | Where-Object { $_ -like "$word*" } | ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }',
    "}",
  ],
};
