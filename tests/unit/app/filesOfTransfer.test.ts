import { expect, test } from 'vitest';
import { droppedFiles, holdsFiles, pastedFiles } from '../../../src/app/filesOfTransfer.ts';

/** As much of a DataTransfer as is looked at; Node has none. */
const transfer = (files: readonly File[], folders: readonly string[] = [], text = ''): DataTransfer =>
	({
		files,
		types: [...(text === '' ? [] : ['text/plain']), ...(files.length > 0 ? ['Files'] : [])],
		items: files.map(({ name }) => ({
			kind: 'file',
			webkitGetAsEntry: () => ({ isDirectory: folders.includes(name) }),
		})),
		getData: () => text,
	}) as unknown as DataTransfer;

const [list, folder, picture] = ['list.csv', 'prints', 'image.png'].map((name) => new File(['title\n'], name)) as [
	File,
	File,
	File,
];

test('files are told from folders, and from a text that is dragged', () => {
	expect(droppedFiles(transfer([folder, list], ['prints']))).toEqual({ files: [list], folders: ['prints'] });
	expect(droppedFiles(transfer([list]))).toEqual({ files: [list], folders: [] });
	expect([holdsFiles(transfer([list])), holdsFiles(transfer([], [], 'a text')), holdsFiles(null)]).toEqual([
		true,
		false,
		false,
	]);
});

test.each([
	['a file', [list], '', [list]],
	['a file with its name as text', [list], 'list.csv', [list]],
	['files with their paths as text', [list, picture], '/home/ilse/list.csv\n/home/ilse/image.png\n', [list, picture]],
	['cells with a picture of them', [picture], 'Pier\t456', []],
	['a text', [], 'Pier', []],
])('pasted: %s', (_, files, text, taken) => expect(pastedFiles(transfer(files, [], text))).toEqual(taken));

test('nothing pasted is no file', () => expect(pastedFiles(null)).toEqual([]));
