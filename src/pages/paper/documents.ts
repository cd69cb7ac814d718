import { boardsDocument } from './boardsDocument.ts';
import { cardsDocument } from './cardsDocument.ts';
import { catalogueDocument } from './catalogueDocument.ts';
import { cataloguePicturesDocument } from './cataloguePicturesDocument.ts';
import { contactDocument } from './contactDocument.ts';
import { editionsDocument } from './editionsDocument.ts';
import { framingDocument } from './framingDocument.ts';
import { getDocument } from './getDocument.ts';
import { handOverDocument } from './handOverDocument.ts';
import { hangingDocument } from './hangingDocument.ts';
import { hookMarksDocument } from './hookMarksDocument.ts';
import { backLabelsDocument, wallLabelsDocument } from './labelsDocument.ts';
import { listDocument } from './listDocument.ts';
import { marksDocument } from './marksDocument.ts';
import { packingDocument } from './packingDocument.ts';
import type { PaperDocument } from './paperDocument.ts';
import { printsDocument } from './printsDocument.ts';
import { templatesDocument } from './templatesDocument.ts';

/** Everything that may be printed, by what it is for, in the order in which it comes out. */
export const documentGroups: readonly { readonly heading: string; readonly documents: readonly PaperDocument[] }[] = [
	{ heading: 'To get and print', documents: [getDocument, printsDocument] },
	{
		heading: 'For the bench',
		documents: [
			...[boardsDocument, listDocument, marksDocument, templatesDocument],
			...[framingDocument, cardsDocument, backLabelsDocument],
		],
	},
	{ heading: 'For the wall', documents: [hangingDocument, hookMarksDocument, wallLabelsDocument] },
	{
		heading: 'For the record',
		documents: [
			...[catalogueDocument, cataloguePicturesDocument, contactDocument],
			...[editionsDocument, handOverDocument, packingDocument],
		],
	},
];
