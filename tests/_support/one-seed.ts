import fc from "fast-check";

/** What fails must fail again: the properties of a run go by one seed. `SEED=n npm test` goes by another. */
fc.configureGlobal({ seed: Number(process.env.SEED ?? 20_261) });
