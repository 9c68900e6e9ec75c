import { logoDataUrl, MOST_LOGO_BYTES } from "@stayput/handout";
import { describe, expect, it } from "vitest";
import { checkedLogo } from "../../../../packages/handout/src/file/logo.ts";

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const png = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13);
const jpeg = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 16);

describe("a workshop's mark", () => {
  it.each([
    ["PNG", png, "data:image/png;base64,iVBORw0KGgoAAAAN"],
    ["JPEG", jpeg, "data:image/jpeg;base64,/9j/4AAQ"],
    ["SVG", utf8("<svg xmlns='http://www.w3.org/2000/svg'/>"), "data:image/svg+xml;base64,PHN2"],
    [
      "SVG behind its prologue",
      utf8("\uFEFF<?xml version='1.0'?><!-- <b> --><!DOCTYPE svg>\n<svg/>"),
      "data:image/svg+xml",
    ],
  ])("%s is taken", (_kind, bytes, start) => {
    const url = logoDataUrl(bytes);
    expect(url.startsWith(start)).toBe(true);
    expect(checkedLogo(url)).toBe(url);
  });

  it.each([
    ["a page", utf8("<html><svg/></html>")],
    ["words", utf8("svg")],
    ["words about <svg>", utf8("here is <svg>")],
    ["a GIF", utf8("GIF89a....")],
    ["nothing", new Uint8Array()],
  ])("%s is refused", (_kind, bytes) => expect(() => logoDataUrl(bytes)).toThrow(/^logo: .* PNG, JPEG or SVG/));

  it("too large a file is refused with its size", () => {
    const large = new Uint8Array(MOST_LOGO_BYTES + 1);
    large.set(png);
    expect(() => logoDataUrl(large)).toThrow(
      "a file of 201 kB was given; accepted is a PNG, JPEG or SVG file of at most 200 kB",
    );
    expect(() => checkedLogo(logoDataUrl(large.subarray(0, MOST_LOGO_BYTES)))).not.toThrow();
  });

  it.each([
    "https://example.com/logo.png",
    "javascript:alert(1)",
    "data:text/html;base64,AAAA",
    'data:image/png;base64,AAAA" onerror="alert(1)',
    "data:image/svg+xml,<svg/>",
  ])("%s is no place for one", (url) => expect(() => checkedLogo(url)).toThrow(RangeError));
});
