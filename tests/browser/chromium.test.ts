import { expect, it } from "vitest";
import { launchChromium } from "./chromium.ts";

it("starts a browser that runs a page's script and its worker", async () => {
  const browser = await launchChromium();
  try {
    const page = await browser.newPage();
    await page.setContent("<p id='said'></p><script>document.getElementById('said').textContent = 6 * 7</script>");
    expect(await page.textContent("#said")).toBe("42");
    const fromWorker = await page.evaluate(
      () =>
        new Promise((resolve) => {
          const source = URL.createObjectURL(new Blob(["postMessage(6 * 7)"], { type: "text/javascript" }));
          new Worker(source).onmessage = ({ data }) => resolve(data);
        }),
    );
    expect(fromWorker).toBe(42);
  } finally {
    await browser.close();
  }
});
