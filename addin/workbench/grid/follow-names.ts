import { ICommandService, type Univer } from "@univerjs/core";
import {
  IDefinedNamesService,
  IFormulaCurrentConfigService,
  IFunctionService,
  Lexer,
  LexerNode,
  RemoveDefinedNameMutation,
  SetDefinedNameMutation,
} from "@univerjs/engine-formula";
import { withNames } from "./with-names";

const WHOLE_WORKBOOK = "AllDefaultWorkbook";

/**
 * Has the engine of a grid go by what names stand for now. By itself it keeps what they stood for when their
 * formula was first calculated, even in another workbook, and puts it in without brackets.
 */
export function followNames(univer: Univer): void {
  const injector = univer.__getInjector();
  const held = injector.get(IDefinedNamesService);
  const current = injector.get(IFormulaCurrentConfigService);
  const lexer = injector.get(Lexer);
  const build = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (formula, transformsSuffix) => {
    const book = current.getExecuteUnitId();
    if (!book || held.getAllDefinedNamesIsEmpty()) return build(formula, transformsSuffix);
    const taken = withNames(formula, (name, sheet) => {
      const known = held.getValueByName(book, name);
      if (!known) return null;
      const { localSheetId = WHOLE_WORKBOOK } = known;
      const isOther =
        sheet !== null &&
        localSheetId !== WHOLE_WORKBOOK &&
        current.getSheetName(book, localSheetId) !== sheet;
      return isOther ? null : { name: known.name, refersTo: known.formulaOrRefString };
    });
    const node = build(taken.formula, transformsSuffix);
    if (taken.names.length > 0 && node instanceof LexerNode) node.setDefinedNames([...taken.names]);
    return node;
  };
  injector.get(ICommandService).onCommandExecuted(({ id }) => {
    // formulas that were read before are read again
    if (id === SetDefinedNameMutation.id || id === RemoveDefinedNameMutation.id)
      injector.get(IFunctionService).deleteFormulaAstCacheKey("=");
  });
}
