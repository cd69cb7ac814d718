import type { Unit } from '../length/reading.ts';
import type { TypedSettings } from './settings.ts';

/** What the settings that a show leaves blank are, as they could be typed. A key without a default is not in it. */
export interface DefaultSettings {
	readonly ruler: string;
	readonly mountSize: string;
	readonly border: string;
	readonly leastBorder: string;
	readonly bottomWeight: string;
	readonly overlap: string;
	readonly unevenTolerance: string;
	readonly cuttingTolerance: string;
	readonly hingeMargin: string;
	readonly innerBlankSmaller: string;
	readonly spares: string;
	readonly backingSmaller: string;
	readonly frameClearance: string;
	readonly pointsRoom: string;
	readonly leastSpacer: string;
	readonly saw: string;
	readonly pixelsAnInch: string;
	readonly proofs: string;
	readonly stackGap: string;
	readonly commission: string;
	readonly vat: string;
	readonly priceStep: string;
	readonly costInPrice: string;
}

const metric: DefaultSettings = {
	ruler: '1 mm',
	mountSize: '500 x 400 mm',
	border: '65 mm',
	leastBorder: '40 mm',
	bottomWeight: '10%',
	overlap: '3 mm',
	unevenTolerance: '15%',
	cuttingTolerance: '2 mm',
	hingeMargin: '5 mm',
	innerBlankSmaller: '3 mm',
	spares: '0%',
	backingSmaller: '0 mm',
	frameClearance: '3 mm',
	pointsRoom: '2 mm',
	leastSpacer: '3 mm',
	saw: '5 mm',
	pixelsAnInch: '240',
	proofs: '0',
	stackGap: '60 mm',
	commission: '0%',
	vat: '0%',
	priceStep: '1',
	costInPrice: 'no',
};

const inch: DefaultSettings = {
	ruler: '1/16 in',
	mountSize: '20 x 16 in',
	border: '2 1/2 in',
	leastBorder: '1 1/2 in',
	bottomWeight: '10%',
	overlap: '1/8 in',
	unevenTolerance: '15%',
	cuttingTolerance: '1/16 in',
	hingeMargin: '1/4 in',
	innerBlankSmaller: '1/8 in',
	spares: '0%',
	backingSmaller: '0 in',
	frameClearance: '1/8 in',
	pointsRoom: '1/16 in',
	leastSpacer: '1/8 in',
	saw: '3/16 in',
	pixelsAnInch: '240',
	proofs: '0',
	stackGap: '2 1/2 in',
	commission: '0%',
	vat: '0%',
	priceStep: '1',
	costInPrice: 'no',
};

/** The defaults of a show in a unit: metric ones, or round figures in inches. */
export const defaultSettings = (unit: Unit): DefaultSettings => (unit === 'in' ? inch : metric);

/** The settings that a show begun in the app has typed: one spare blank in ten. */
export const newShowSettings: TypedSettings = { unit: 'mm', spares: '10%' };
