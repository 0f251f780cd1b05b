import js from "@eslint/js";
import jsdoc from "eslint-plugin-jsdoc";
import reactHooks from "eslint-plugin-react-hooks";
import tseslint from "typescript-eslint";
import { core } from "./folder-table.mjs";

const coreFiles = core.map((folder) => `src/${folder}/**/*.ts`);
const ban = (selector, message) => ({ selector, message });

/** Asked of every file of ours. */
const everywhere = [
  ban(
    "CallExpression[callee.object.name=/^(it|test|describe)$/][callee.property.name=/^(only|skip|todo)$/]",
    "Every test runs; one that needs data from elsewhere uses describe.skipIf.",
  ),
];

const noDefaultExport = ban("ExportDefaultDeclaration", "One idea, one name: export it by name.");

/** Exported signatures of the core carry units; ratios and counts use the aliases Ratio and Count. */
const unitsInSignatures = [
  ban(
    "ExportNamedDeclaration > FunctionDeclaration > Identifier.params > TSTypeAnnotation > TSNumberKeyword",
    "Give this parameter its unit (base/quantities.ts), or Ratio or Count where it has none.",
  ),
  ban(
    "ExportNamedDeclaration > FunctionDeclaration > TSTypeAnnotation.returnType > TSNumberKeyword",
    "Give this result its unit (base/quantities.ts), or Ratio or Count where it has none.",
  ),
];

const pureCore = [
  ban(
    "MemberExpression[object.name='Math'][property.name='random']",
    "Chance comes in as an argument (base/chance.ts).",
  ),
  ban("MemberExpression[object.name='Date'][property.name='now']", "Time comes in as an argument."),
  ban("NewExpression[callee.name='Date'][arguments.length=0]", "Time comes in as an argument."),
  ban("MemberExpression[object.name='performance']", "Time comes in as an argument."),
];

const exportedFunction = "ExportNamedDeclaration > FunctionDeclaration";

export default tseslint.config(
  { ignores: ["dist/**", "coverage/**", "tests/golden/**"] },
  js.configs.recommended,
  tseslint.configs.recommended,
  {
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_" }],
      eqeqeq: "error",
      "max-lines": ["error", { max: 400, skipBlankLines: true, skipComments: true }],
      "max-lines-per-function": ["error", { max: 60, skipBlankLines: true, skipComments: true }],
      "no-restricted-syntax": ["error", ...everywhere],
      "no-warning-comments": ["error", { terms: ["todo", "fixme", "xxx"] }],
    },
  },
  {
    files: ["src/**", "tests/**/*.ts", "tests/**/*.tsx"],
    rules: { "no-restricted-syntax": ["error", ...everywhere, noDefaultExport] },
  },
  {
    // A describe block is a list of sentences, and a table of published values is as long as it is.
    files: ["tests/**"],
    rules: { "max-lines-per-function": "off" },
  },
  {
    files: coreFiles,
    plugins: { jsdoc },
    settings: { jsdoc: { mode: "typescript" } },
    rules: {
      "no-console": "error",
      "no-param-reassign": [
        "error",
        { props: true, ignorePropertyModificationsForRegex: ["^(out|into)"] },
      ],
      "no-restricted-syntax": [
        "error",
        ...everywhere,
        noDefaultExport,
        ...unitsInSignatures,
        ...pureCore,
      ],
      "jsdoc/require-jsdoc": [
        "error",
        {
          publicOnly: { esm: true },
          require: { FunctionDeclaration: true, ClassDeclaration: true },
          contexts: [
            "ExportNamedDeclaration > TSInterfaceDeclaration",
            "ExportNamedDeclaration > TSTypeAliasDeclaration",
            "ExportNamedDeclaration > VariableDeclaration",
          ],
        },
      ],
      "jsdoc/require-description": ["error", { contexts: [exportedFunction] }],
      "jsdoc/require-param": ["error", { contexts: [exportedFunction], checkDestructured: false }],
      "jsdoc/require-param-description": ["error", { contexts: [exportedFunction] }],
      "jsdoc/require-returns": ["error", { contexts: [exportedFunction] }],
      "jsdoc/require-returns-description": ["error", { contexts: [exportedFunction] }],
      "jsdoc/check-param-names": ["error", { checkDestructured: false }],
      "jsdoc/check-tag-names": ["error", { definedTags: ["source"] }],
      "jsdoc/no-types": "error",
    },
  },
  {
    // Where plain numbers become units.
    files: ["src/base/quantities.ts"],
    rules: { "no-restricted-syntax": ["error", ...everywhere, noDefaultExport, ...pureCore] },
  },
  {
    files: ["src/ui/**"],
    plugins: { "react-hooks": reactHooks },
    rules: reactHooks.configs.recommended.rules,
  },
  {
    files: ["**/*.mjs"],
    languageOptions: {
      globals: {
        process: "readonly",
        performance: "readonly",
        URL: "readonly",
        console: "readonly",
      },
    },
  },
);
