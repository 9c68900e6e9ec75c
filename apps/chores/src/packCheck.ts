/**
 * Whether the packages can be published: built from nothing, packed, looked through, installed from their tarballs into an
 * empty project elsewhere, type-checked there, run in Node and run from a bundle. `npm run pack:check`.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { packAll } from "./pack/build.ts";
import { tryOut } from "./pack/consumer.ts";
import { tarballFaults } from "./pack/faults.ts";

const away = mkdtempSync(join(tmpdir(), "packed-"));
try {
  const packed = packAll(away);
  const faults = (await Promise.all(packed.map(tarballFaults))).flat();
  for (const { name, files, bytes } of packed)
    console.log(`${name}: ${files.length} files, ${Math.round(bytes / 1000)} kB`);
  const said = tryOut(packed, join(away, "elsewhere"));
  console.log(said.node.trim());
  if (said.bundle !== said.node) faults.push(`the bundle says otherwise:\n${said.bundle}`);
  for (const fault of faults) console.error(fault);
  console.log(`${packed.length} packages, ${faults.length} faults`);
  process.exitCode = faults.length === 0 ? 0 : 1;
} catch (fault) {
  console.error(fault instanceof Error ? fault.message : fault);
  process.exitCode = 1;
} finally {
  rmSync(away, { recursive: true, force: true });
}
