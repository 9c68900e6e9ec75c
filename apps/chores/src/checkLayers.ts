import { readdirSync } from "node:fs";
import { cruise, type ICruiseResult, type IModule } from "dependency-cruiser";
import extractDepcruiseOptions from "dependency-cruiser/config-utl/extract-depcruise-options";
import extractTSConfig from "dependency-cruiser/config-utl/extract-ts-config";

/**
 * The layer rules of .dependency-cruiser.cjs over every package and app. A checker that finds no module, or follows no
 * import between packages, would report a clean house: that is a failure here.
 */
const options = await extractDepcruiseOptions("./.dependency-cruiser.cjs");
const { output } = await cruise(["packages", "apps"], options, undefined, {
  tsConfig: extractTSConfig("tsconfig.json"),
});
const { modules, summary } = output as ICruiseResult;

const faults = [...blindSpots(modules), ...summary.violations.map((v) => `${v.rule.name}: ${v.from} -> ${v.to}`)];
for (const fault of faults) console.error(fault);
console.log(
  `${summary.totalCruised} modules, ${summary.totalDependenciesCruised ?? 0} imports, ${faults.length} faults`,
);
process.exitCode = faults.length === 0 ? 0 : 1;

function blindSpots(modules: readonly IModule[]): string[] {
  const seen = new Set(modules.map((module) => module.source));
  const houses = ["packages", "apps"].flatMap((top) => readdirSync(top).map((name) => `${top}/${name}`));
  const files = houses.flatMap(sourcesOf);
  const crossings = modules
    .flatMap((m) => m.dependencies)
    .filter((d) => d.module.startsWith("@stayput/") && d.followable);
  return [
    ...(files.length === 0 ? ["no source file was found to check"] : []),
    ...files.filter((file) => !seen.has(file)).map((file) => `${file} was not checked`),
    ...(crossings.length === 0 ? ["no import between packages was followed: is the source condition read?"] : []),
  ];
}

function sourcesOf(house: string): string[] {
  const files = readdirSync(house, { recursive: true, encoding: "utf8" }).map((file) => `${house}/${file}`);
  return files.filter((file) => file.startsWith(`${house}/src/`) && file.endsWith(".ts") && !file.endsWith(".d.ts"));
}
