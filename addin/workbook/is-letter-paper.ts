/** Whether offices under a standard print on US Letter, else on A4: common practice. */
export const isLetterPaper = (standardId: string): boolean => /^(?:ACI|CSA)/.test(standardId);
