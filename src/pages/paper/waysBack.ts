import type { Place } from '../place.svelte.ts';

/** What is printed by itself, by the ids of documents, and the way back, for each place that leads to the paper. */
export const waysBack: Partial<Record<Place, { href: string; label: string; shown: readonly string[] }>> = {
	boards: { href: '#boards', label: 'Back to the boards', shown: ['boards'] },
	get: { href: '#get', label: 'Back to “To get”', shown: ['get'] },
	across: { href: '#across', label: 'Back to the whole show', shown: ['contact'] },
	'print-list': { href: '#print-list', label: 'Back to the pictures to print', shown: ['prints'] },
	wall: { href: '#wall', label: 'Back to the wall', shown: ['hanging'] },
	sales: { href: '#sales', label: 'Back to the sales', shown: ['editions'] },
	finish: { href: '#finish', label: 'Back to finishing', shown: ['cards'] },
	bench: { href: '#bench', label: 'Back to the bench', shown: ['list', 'marks'] },
};
