import tseslint from "typescript-eslint";

export default tseslint.config(
  {
    ignores: [
      "dist/",
      "coverage/",
      "reports/",
      ".stryker-tmp/",
      "docs/*",
      "!docs/sheet/",
      "node_modules/",
      "test/runtimes/consumers/",
      "test/apps/{page,service,notebook}/",
    ],
  },
  {
    files: ["src/**/*.ts", "test/**/*.ts", "docs/sheet/**/*.ts", "*.ts"],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "no-restricted-globals": ["error", "Date", "window", "process"],
      // Enums and classes are not used here, and to look for them takes a quarter of the time.
      "@typescript-eslint/no-unsafe-enum-assignment": "off",
      "@typescript-eslint/no-unsafe-class-instance-assignment": "off",
      // A field is left out of a copy by taking it apart.
      "@typescript-eslint/no-unused-vars": ["error", { ignoreRestSiblings: true }],
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
    // The page has a clock and a window, and is no part of the package.
    files: ["docs/sheet/**/*.ts"],
    rules: { "no-restricted-globals": "off" },
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
