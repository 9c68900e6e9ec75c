import { html, nothing, svg } from "lit";
import { describe, expect, it } from "vitest";
import { templateText } from "../../../../packages/charts/src/paper/templateText.ts";

describe("a template written as text", () => {
  it("nests templates and lists, and leaves out what is empty", () => {
    const list = [1, 2].map((n) => svg`<b>${n}</b>`);
    expect(templateText(svg`<a>${list}${nothing}${null}${undefined}${"x"}</a>`)).toBe("<a><b>1</b><b>2</b>x</a>");
  });
  it("writes html templates, pictures inside them included", () => {
    expect(templateText(html`<p class=${"a"}>${svg`<b>${"<"}</b>`}${html`<i>${1}</i>`}</p>`)).toBe(
      '<p class="a"><b>&lt;</b><i>1</i></p>',
    );
  });
  it("quotes a bare attribute, keeps a part of a quoted one, drops an empty one", () => {
    expect(templateText(svg`<a b=${1} c="d ${2} e" f=${nothing} g=${"h"}></a>`)).toBe('<a b="1" c="d 2 e" g="h"></a>');
  });
  it("escapes in content and in attributes alike", () => {
    const nasty = `<script>"&'`;
    expect(templateText(svg`<a b=${nasty}>${nasty}</a>`)).toBe(
      `<a b="&lt;script&gt;&quot;&amp;'">&lt;script&gt;&quot;&amp;'</a>`,
    );
  });
  it("is not misled by tags inside values", () => {
    expect(templateText(svg`<a b=${"<"}>${">"}${"="}${1}</a>`)).toBe('<a b="&lt;">&gt;=1</a>');
  });
  it.each([
    ["an event", svg`<a @click=${"x"}></a>`],
    ["a property", svg`<a .b=${"x"}></a>`],
    ["a boolean", svg`<a ?b=${"x"}></a>`],
    ["an object", svg`<a>${{}}</a>`],
    ["a truth value", svg`<a>${true}</a>`],
    ["no template", "text"],
  ])("refuses %s", (_name, template) => expect(() => templateText(template)).toThrow(TypeError));
});
