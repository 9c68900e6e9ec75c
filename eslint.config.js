import js from "@eslint/js";
import { defineConfig, globalIgnores } from "eslint/config";
import lit from "eslint-plugin-lit";
import litA11y from "eslint-plugin-lit-a11y";
import wc from "eslint-plugin-wc";
import tseslint from "typescript-eslint";

/** What a layer may not import, in words. The same arrows are checked file by file in .dependency-cruiser.cjs. */
const deepImport = {
  group: ["@stayput/*/src", "@stayput/*/src/**", "@stayput/*/dist/**", "**/packages/*/src/**"],
  message: "Import a package by its name; what it does not export is its own.",
};
const layer = (name, may) => ({
  files: [`${name}/src/**/*.ts`],
  rules: {
    "no-restricted-imports": [
      "error",
      {
        patterns: [
          deepImport,
          {
            regex: may.length === 0 ? "^@stayput/" : `^@stayput/(?!(${may.join("|")})(/|$))`,
            message:
              may.length === 0 ? "This layer imports none of ours." : `This layer may import only: ${may.join(", ")}.`,
          },
        ],
      },
    ],
  },
});

export default defineConfig([
  globalIgnores(["**/dist/", "coverage/", "**/.cache/", "packages/catalogue/src/data/"]),
  js.configs.recommended,
  {
    files: ["**/*.ts"],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { project: "./tsconfig.json", tsconfigRootDir: import.meta.dirname } },
    rules: {
      eqeqeq: "error",
      "no-control-regex": "off", // names from outside are cleaned of control characters by just such patterns
      "no-param-reassign": "error",
      "max-lines-per-function": ["error", { max: 60, skipBlankLines: true, skipComments: true }],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      "@typescript-eslint/explicit-module-boundary-types": "error",
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
      // numbers print as they are; anything else in a template is a mistake
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
      // an index known to be in range is common in the hour loops, and a test for undefined there costs time
      "@typescript-eslint/no-non-null-assertion": "off",
      "@typescript-eslint/no-unnecessary-condition": [
        "error",
        { allowConstantLoopConditions: "only-allowed-literals" },
      ],
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", varsIgnorePattern: "^_" }],
    },
  },
  {
    // the hourly recurrence is one loop on purpose: its state stays in locals, and nothing is called or made a step
    files: ["packages/sim/src/stay/plainSteps.ts"],
    rules: { "max-lines-per-function": ["error", { max: 90, skipBlankLines: true, skipComments: true }] },
  },
  {
    // and so is what it comes to on the road: in parts, it would take twice as long
    files: ["packages/sim/src/stay/roadHour.ts"],
    rules: { "max-lines-per-function": ["error", { max: 155, skipBlankLines: true, skipComments: true }] },
  },
  layer("packages/sim", []),
  layer("packages/catalogue", ["sim"]),
  layer("packages/job", ["catalogue", "sim"]),
  layer("packages/charts", ["sim"]),
  layer("packages/handout", ["job", "catalogue", "charts", "sim"]),
  layer("apps/cli", ["job", "catalogue", "charts", "handout", "sim"]),
  layer("apps/web", ["job", "catalogue", "charts", "handout", "sim"]),
  {
    files: ["apps/web/src/**/*.ts", "packages/charts/src/**/*.ts", "packages/handout/src/**/*.ts"],
    extends: [lit.configs["flat/recommended"], wc.configs["flat/recommended"]],
    plugins: { "lit-a11y": litA11y },
    rules: {
      ...litA11y.configs.recommended.rules,
      "@typescript-eslint/unbound-method": "off", // Lit binds listeners in templates itself
      // `@property() x?: string` and the like: decorators keep fields that look unused to the rule
      "@typescript-eslint/no-extraneous-class": "off",
    },
  },
  {
    // tests are long lists of cases, and may reach inside a package to test one of its parts
    files: ["tests/**/*.ts"],
    rules: {
      "max-lines-per-function": "off",
      "@typescript-eslint/no-unsafe-assignment": "off",
      "@typescript-eslint/no-unsafe-member-access": "off",
      "@typescript-eslint/no-unsafe-argument": "off",
    },
  },
  {
    files: ["**/*.cjs"],
    languageOptions: { sourceType: "commonjs", globals: { module: "writable", require: "readonly" } },
  },
]);
