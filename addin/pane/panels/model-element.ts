import { LitElement, type PropertyValues } from "lit";

/** What tells when it is to be drawn anew. */
interface Watched {
  subscribe(listener: () => void): () => void;
}

/** An element that draws one model, again whenever that changes. Give it a `model`. */
export class ModelElement<Model extends Watched> extends LitElement {
  static override properties = { model: { attribute: false } };

  declare model: Model | undefined;
  #stop: (() => void) | undefined;

  override willUpdate(changed: PropertyValues): void {
    if (!changed.has("model")) return;
    this.#stop?.();
    this.#stop = this.model?.subscribe(() => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.();
    this.#stop = undefined;
  }
}
