import { packJob, parseJobText, unpackJob } from "@stayput/job";
import { base64urlnopad } from "@scure/base";
import { deflateSync, strToU8 } from "fflate";
import { describe, expect, it } from "vitest";
import { crc32 } from "../../../packages/job/src/link/crc32.ts";
import { dictionary } from "../../../packages/job/src/link/dictionary.ts";
import { demo } from "./helpers.ts";

const read = parseJobText(demo("family-caravan"));
if (!read.ok) throw new Error(read.faults[0]?.message);
const { job } = read;
const link = packJob(job);

/** A link as an attacker would make it: anything at all, with a checksum that is right. */
function forged(bytes: Uint8Array): string {
  const packed = deflateSync(bytes, { level: 9, dictionary: strToU8(dictionary) });
  return sealed(packed);
}
function sealed(packed: Uint8Array): string {
  const all = new Uint8Array(packed.length + 4);
  new DataView(all.buffer).setUint32(0, crc32(packed));
  all.set(packed, 4);
  return `1.${base64urlnopad.encode(all)}`;
}
const says = (fragment: string): string => {
  const back = unpackJob(fragment);
  return back.ok ? "taken" : back.faults[0]!.message;
};

describe("a link", () => {
  it("holds the whole job, in letters that fit a QR code", () => {
    expect(unpackJob(link)).toEqual({ ok: true, job, notes: [] });
    expect(link.length).toBeLessThan(2331); // alphanumeric and byte QR codes at level M hold 2331 bytes (ISO/IEC 18004)
  });
  it("reads as it did when version 1 was made", () => {
    // Frozen: made by the first release. If this fails, links that people have sent no longer open.
    const first =
      "1.94O_-yNJMSjtoLoosVQXGLfAzAAMGIzwMDDUNTACeQ0aLsZARWj-y0H43AfIJLaIMwSmAzwFJzBO8QayH5iDLSVC0iBKojM0MKgFmgkA";
    expect(unpackJob(first)).toMatchObject({ ok: true, job: { title: "t", setups: [{ bank: { capacity_Ah: 100 } }] } });
  });
  it("that is damaged, cut short, of another version or none is told apart", () => {
    expect(says(link.slice(0, -5))).toMatch(/damaged or cut short/);
    expect(says(`${link}A`)).toMatch(/damaged or cut short/);
    expect(says(link.replace("1.", "2."))).toMatch(/another version/);
    expect(says("")).toMatch(/holds no job/);
    expect(says("about")).toMatch(/holds no job/);
    expect(says("1.")).toMatch(/damaged/);
    expect(says("1.<script>")).toMatch(/damaged/);
    expect(says("x".repeat(1_000_000))).toMatch(/longer than/);
  });
  it("that would unpack to gigabytes is stopped on the way", () => {
    const bomb = forged(new Uint8Array(200_000_000));
    expect(bomb.length).toBeLessThan(400_000);
    const before = process.memoryUsage().arrayBuffers;
    expect(says(bomb)).toMatch(/does not unpack to a job of at most 1000000 bytes/);
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(20_000_000);
  });
  it("with a right checksum over nonsense is refused all the same", () => {
    expect(says(sealed(new Uint8Array([7, 7, 7, 7])))).toMatch(/does not unpack/);
    expect(says(sealed(deflateSync(strToU8("{}")).subarray(0, 1)))).toMatch(/does not unpack/);
    expect(says(forged(strToU8("{")))).toMatch(/not readable as JSON/);
    expect(says(forged(strToU8('{"__proto__":{"x":1}}')))).toMatch(/format|__proto__/);
    expect(says(forged(new Uint8Array([0xff, 0xfe, 0x00])))).toMatch(/not readable as JSON/);
  });
});

describe("crc32", () => {
  it('is 0xCBF43926 for "123456789", the check value of the standard', () => {
    expect(crc32(strToU8("123456789"))).toBe(0xcbf43926);
  });
});
