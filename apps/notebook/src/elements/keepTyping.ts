import { noChange } from "lit";
import {
  Directive,
  type DirectiveParameters,
  directive,
  type ElementPart,
  type PartInfo,
  PartType,
} from "lit/directive.js";

/**
 * Shows a value in an input, but never over what the reader is typing there. The page redraws when an answer
 * arrives; an entry that is not finished yet must survive that.
 */
class KeepTyping extends Directive {
  #shown: string | undefined;

  constructor(part: PartInfo) {
    super(part);
    if (part.type !== PartType.ELEMENT) throw new Error("keepTyping stands in an input's tag.");
  }

  render(_value: string): typeof noChange {
    return noChange;
  }

  override update(part: ElementPart, [value]: DirectiveParameters<this>): typeof noChange {
    const input = part.element;
    if (!(input instanceof HTMLInputElement || input instanceof HTMLTextAreaElement)) return noChange;
    const typing =
      document.activeElement === input && this.#shown !== undefined && input.value !== this.#shown;
    if (!typing && input.value !== value) {
      // Who has gone to the field and types next replaces what comes, as what was there would have been.
      const whole = input.selectionStart === 0 && input.selectionEnd === input.value.length;
      input.value = value;
      if (whole && document.activeElement === input) input.select();
    }
    this.#shown = value;
    return noChange;
  }
}

export const keepTyping = directive(KeepTyping);
