// Node has a fetch() of its own that cannot read file paths; without it the glue code reads the module from disk.
globalThis.fetch = undefined;
