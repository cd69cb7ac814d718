import type { WorkedRow } from './workedRow.ts';

/** The frame of a row and what lies in it, by their names in the show's lists, whether the row names them or not. */
export const namesInFrame = ({ frame, materials: { glazing, backing } }: Pick<WorkedRow, 'frame' | 'materials'>) => ({
	frame: frame.frame?.name,
	glazing: glazing?.name,
	backing: backing?.name,
});
