import tseslint from "typescript-eslint";

export default tseslint.config(
  {
    ignores: [
      "dist/",
      "coverage/",
      "reports/",
      ".stryker-tmp/",
      "docs/",
      "node_modules/",
      "test/runtimes/consumers/",
    ],
  },
  {
    files: ["src/**/*.ts", "test/**/*.ts", "*.ts"],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "no-restricted-globals": ["error", "Date", "window", "process"],
    },
  },
  {
    files: ["src/**/*.ts"],
    rules: {
      // Pure functions only: no clock and no random numbers inside, and nothing in the package prints.
      "no-restricted-properties": [
        "error",
        { object: "Math", property: "random" },
        { object: "Date", property: "now" },
      ],
      "no-console": "error",
    },
  },
  {
    files: ["test/**/*.ts"],
    rules: {
      "no-restricted-globals": "off",
      // Tests hand in wrong values on purpose.
      "@typescript-eslint/no-unsafe-argument": "off",
      "@typescript-eslint/no-unsafe-assignment": "off",
      "@typescript-eslint/no-explicit-any": "off",
      "@typescript-eslint/no-non-null-assertion": "off",
    },
  },
);
