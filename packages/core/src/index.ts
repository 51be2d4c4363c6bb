// The only door of the package: every public name, by folder. No `export *`.
