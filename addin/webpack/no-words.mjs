/** In place of words that are brought later. */
export default {};
