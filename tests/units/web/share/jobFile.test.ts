import { expect, it } from "vitest";
import { linkIn } from "../../../../apps/web/src/keep/start.ts";
import { fileNameOf } from "../../../../apps/web/src/share/jobFile.ts";
import { MOST_BYTES, qrOf } from "../../../../apps/web/src/share/qr.ts";

it.each([
  ["North, in July", "North-in-July.json"],
  ["../../etc/passwd", "etc-passwd.json"],
  ["<b>C:\\x|y?*</b>", "b-C-x-y-b.json"],
  ["عائلة \u202Efdp.exe", "عائلة-fdp-exe.json"],
  ["🧊❄️", "job.json"],
  ["", "job.json"],
  [7, "job.json"],
])("a job called %j is saved as %s", (title, name) => {
  expect(fileNameOf(title, ".json")).toBe(name);
});

it("has a file's name of bounded length, whatever its title's", () => {
  expect(fileNameOf("x".repeat(100_000), ".json")).toBe(`${"x".repeat(60)}.json`);
  expect(fileNameOf("e\u0301".repeat(90), ".json").normalize("NFC")).toHaveLength(65);
});

it("makes a code of as many bytes as one holds, and of no more", () => {
  expect(qrOf("x".repeat(MOST_BYTES))?.version).toBe(40);
  expect(qrOf("x".repeat(MOST_BYTES + 1))).toBeNull();
  expect(qrOf("é".repeat(MOST_BYTES))).toBeNull();
  expect(qrOf("http://x")?.size).toBe(21 + 8); // version 1, and four modules of plain paper on each side
});

it("tells a link's fragment from the page's own", () => {
  expect(linkIn("")).toBeNull();
  expect(linkIn("#")).toBeNull();
  expect(linkIn("#row-4")).toBeNull();
  expect(linkIn("#1.abc")).toBe("1.abc");
});
