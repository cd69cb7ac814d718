import { expect, test } from 'vitest';
import { lostWords, type LostReport } from '../../../../src/core/device/lostShows.ts';

const time = { day: () => '21 September', moment: () => '6 November, 21:20' };
const gone = { id: 'a', name: 'Light on the estuary', prints: 30, copiedAt: 1 };
const begun = { id: 'b', name: ' ', prints: 1 };
const waiting = { id: 'c', name: 'Low water', prints: 12, isCopied: true };
const putBack = { id: 'd', name: 'Spring', at: 1 };
const said = (report: Partial<LostReport>) => lostWords({ gone: [], putBack: [], ...report }, time);

test('those missing, those that wait and those restored have a title each, and a line for each show', () => {
	expect(said({ gone: [gone, waiting, begun], putBack: [putBack] }).groups).toEqual([
		{
			title: '2 shows are missing from this device',
			lines: ['Light on the estuary, 30 prints, backed up 21 September.', 'Unnamed show, 1 print, in no backup.'],
		},
		{
			title: '1 show is not restored yet',
			lines: ['Low water, 12 prints, never backed up. Free some space on this device, then reload this page.'],
		},
		{
			title: '1 show is restored',
			lines: ['Spring was restored as of 6 November, 21:20. Pictures may be missing.'],
		},
	]);
	expect(said({ putBack: [putBack, putBack] }).groups.map(({ title }) => title)).toEqual(['2 shows are restored']);
});

test('what to do is said only where it helps, and past five shows the rest is counted', () => {
	const another = /still open in another tab/;
	expect(said({ gone: [gone] }).more.join()).toMatch(another);
	expect(said({ putBack: [putBack] }).more.join()).not.toMatch(another);
	expect(said({ gone: Array.from({ length: 8 }, () => gone) }).groups[0]!.lines.slice(4)).toEqual([
		'Light on the estuary, 30 prints, backed up 21 September.',
		'3 more.',
	]);
});
