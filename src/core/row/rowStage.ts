/** The words that `stage` may hold, in the order in which a print comes to them. */
export const stageWords = ['planned', 'printed', 'mounted', 'framed', 'hung', 'sold', 'collected'] as const;

/** One of `stageWords`. */
export type Stage = (typeof stageWords)[number];

/** Whether a print is sold; one that was collected is too. */
export const isSoldStage = (stage: Stage | undefined): boolean => stage === 'sold' || stage === 'collected';
