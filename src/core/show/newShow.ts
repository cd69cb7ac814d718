import type { Unit } from '../length/reading.ts';
import { newShowSettings } from '../settings/defaults.ts';
import type { Show } from './show.ts';

/** A show in which nothing has been typed, of people who measure in that unit. */
export const newShow = (id: string, unit: Unit = 'mm'): Show => ({
	id,
	name: 'New show',
	settings: { ...newShowSettings, unit },
	rows: [],
});
