import type { Length } from '../length/length.ts';
import type { Paper as PageFormat } from '../values/papers.ts';

/** A sheet of labels by its measures, as seen on the page. */
export interface LabelSheet {
	readonly name: string;
	readonly paper: PageFormat;
	/** Of a label. */
	readonly width: Length;
	readonly height: Length;
	/** Labels beside each other. */
	readonly columns: number;
	/** Labels under each other. */
	readonly rows: number;
	/** From the page's left edge to the first label. */
	readonly left: Length;
	/** From the page's top edge to the first label. */
	readonly top: Length;
	readonly gapAcross: Length;
	readonly gapDown: Length;
}
