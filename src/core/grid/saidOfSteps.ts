/** What a step did, within a sentence: “type picture width”. */
export const lower = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1);

/** What is heard when a step is undone. @param label what it did: “Type picture width” */
export const saidOfUndone = (label: string): string => `Undone: ${lower(label)}`;

/** What is heard when a step is done again. */
export const saidOfRedone = (label: string): string => `Redone: ${lower(label)}`;
