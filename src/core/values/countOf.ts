/**
 * How many there are, in words: "1 print", "3 prints".
 * @param many what more than one are called, or none. Default: `one` with an s
 */
export const countOf = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
