import { nothing } from "lit";
import { isPrimitive, isTemplateResult, TemplateResultType } from "lit/directive-helpers.js";

/** Text made safe for both element content and quoted attributes. */
export const escapeXml = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

const isTemplate = (value: unknown) =>
  isTemplateResult(value, TemplateResultType.SVG) || isTemplateResult(value, TemplateResultType.HTML);
const isEmpty = (value: unknown): boolean => value === nothing || value === null || value === undefined;

function primitiveText(value: unknown): string {
  if (isEmpty(value)) return "";
  if (typeof value === "string" || typeof value === "number") return escapeXml(String(value));
  throw new TypeError(`a picture holds text, numbers, templates and lists of them, not ${typeof value}`);
}

function childText(value: unknown): string {
  if (isTemplate(value)) return templateText(value);
  if (Array.isArray(value)) return value.map(childText).join("");
  if (!isPrimitive(value) && !isEmpty(value)) throw new TypeError("a picture cannot hold a Lit directive");
  return primitiveText(value);
}

/** Does the text so far stop inside a tag, where a value is (part of) an attribute's? */
const insideTag = (written: string): boolean => written.lastIndexOf("<") > written.lastIndexOf(">");
const unquotedBinding = /\s([^\s"'<>=@.?]+)=$/;
const otherBinding = /\s[@.?][^\s=]+=["']?$/;

function withAttribute(written: string, value: unknown): string {
  if (otherBinding.test(written)) throw new TypeError("a picture cannot hold event, property or boolean bindings");
  if (!unquotedBinding.test(written)) return written + primitiveText(value);
  return isEmpty(value) ? written.replace(unquotedBinding, "") : `${written}"${primitiveText(value)}"`;
}

/**
 * Writes a Lit template out as text, with no DOM: charts bind only text, numbers, templates, lists and whole or part
 * attributes, so that is all it knows; anything else throws a TypeError. Used for saved pictures and printed pages, in the
 * browser and out of it, where a server-side renderer would weigh more than the charts do and leave its marker comments
 * behind. Values inside `<style>` or `<script>` are not for it: a browser does not read escapes there.
 */
export function templateText(template: unknown): string {
  if (!isTemplate(template)) throw new TypeError("expected a Lit svg or html template");
  const { strings, values } = template;
  return values.reduce<string>((written, value, i) => {
    const next = insideTag(written) ? withAttribute(written, value) : written + childText(value);
    return next + (strings[i + 1] ?? "");
  }, strings[0] ?? "");
}
