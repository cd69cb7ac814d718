import { expect, test } from 'vitest';
import { reminder } from '../../../../src/core/device/reminder.ts';
import { safetySentences } from '../../../../src/core/device/safety.ts';
import { daysLeft, forgottenBefore, freeName } from '../../../../src/core/device/shelf.ts';

const nothing = {
	isInstalled: true,
	isPersistent: true,
	isPassingTab: false,
	copiedOn: undefined,
	changesSince: 0,
};

test.each([
	[nothing, 'Nothing of this show is in a file yet, and nothing has been typed.'],
	[{ ...nothing, changesSince: 1 }, 'This device holds the only copy. Never backed up.'],
	[{ ...nothing, copiedOn: 'on 2 May' }, 'Last backed up on 2 May. Nothing has changed since.'],
	[{ ...nothing, copiedOn: 'on 2 May', changesSince: 12 }, 'Last backed up on 2 May; 12 changes since.'],
])('of the last copy: %j', (known, sentence) => {
	expect(safetySentences(known)[0]).toBe(sentence);
});

test.each([
	[true, 'has promised to keep'],
	[false, 'may clear what is stored'],
	[undefined, 'does not say'],
])('of what the browser promises: %s', (isPersistent, says) => {
	expect(safetySentences({ ...nothing, isPersistent })[1]).toContain(says);
});

test.each([
	[{ isInstalled: true }, 'The app is installed.'],
	[{ isInstalled: false }, 'stay for longer'],
	// WebKit, "Full Third-Party Cookie Blocking and More" (2020): seven days of use of the browser; home screen apps count
	// their own. Only cookies go along to the home screen, so shows are moved as a file.
	[
		{ isInstalled: false, isPassingTab: true },
		'after seven days without use. Press Share, then Add to Home Screen, and open the app from there',
	],
	[{ isInstalled: false, isPassingTab: true }, 'save a backup here and open it there'],
])('of being installed: %j', (known, says) => {
	expect(safetySentences({ ...nothing, ...known })[2]).toContain(says);
});

test('the reminder counts, and says nothing where there is nothing to say', () => {
	const after = (changes: number) => reminder({ changes, last: {} });
	expect([0, 1, 12].map(after)).toEqual(['', '1 change not backed up', '12 changes not backed up']);
});

test('until a file was saved the reminder counts nothing: all of the show is at risk', () => {
	expect([0, 1, 12].map((changes) => reminder({ changes }))).toEqual(['', 'Never backed up', 'Never backed up']);
});

test('a deleted show has thirty days', () => {
	const day = 24 * 60 * 60 * 1000;
	const now = 1000 * day;
	expect([now, now - day / 2, now - 29.5 * day].map((deletedAt) => daysLeft(deletedAt, now))).toEqual([30, 30, 1]);
	expect([now - 29 * day, now - 31 * day].map((deletedAt) => deletedAt < forgottenBefore(now))).toEqual([false, true]);
});

test('a name that another show has gets a number', () => {
	expect(freeName('Spring', ['Autumn'])).toBe('Spring');
	expect(freeName('Spring', ['Spring ', 'Spring (2)'])).toBe('Spring (3)');
});
