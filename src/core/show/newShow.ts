import { newShowSettings } from '../settings/defaults.ts';
import type { Show } from './show.ts';

/** A show in which nothing has been typed. */
export const newShow = (id: string): Show => ({ id, name: 'New show', settings: newShowSettings, rows: [] });
