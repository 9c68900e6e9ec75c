import { noChange } from "lit";
import { directive, Directive, type ElementPart } from "lit/directive.js";

class Styled extends Directive {
  override render(_css: string): unknown {
    return noChange;
  }

  override update({ element }: ElementPart, [css]: [string]): unknown {
    (element as HTMLElement).style.cssText = css;
    return noChange;
  }
}

/** The style of an element, set as a property: the page's policy refuses a style attribute. */
export const styled = directive(Styled);
