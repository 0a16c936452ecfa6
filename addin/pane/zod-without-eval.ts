import { config } from "zod";

/** Keeps zod from trying whether code may be made of text: a strict policy reports even the attempt. */
config({ jitless: true });
