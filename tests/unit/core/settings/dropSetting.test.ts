import { expect, test } from 'vitest';
import { dropSetting } from '../../../../src/core/settings/dropSetting.ts';

test.each<[key: string, settings: Record<string, unknown>, change: Record<string, unknown>]>([
	['sizes', { sizes: 'x' }, { sizes: undefined }],
	['labels.corner', { labels: { name: 'free', corner: 'up' } }, { labels: { name: 'free' } }],
	['views.list[1].name', { views: { sort: 1, list: ['a', 'b', 'c'] } }, { views: { sort: 1, list: ['a', 'c'] } }],
	['views.list[0].order', { views: { list: ['a'] } }, { views: { list: [] } }],
	['boards[2]', { boards: ['a', 'b', 3] }, { boards: ['a', 'b'] }],
	['views.sort.way', { views: { sort: { column: 'top', way: 1 } } }, { views: { sort: { column: 'top' } } }],
	['views.list[0].widths.__proto__', { views: { list: [{}] } }, { views: { list: [] } }],
	['gone.on', {}, { gone: undefined }],
])('%s is taken out of %j', (key, settings, change) => {
	expect(dropSetting(settings, key)).toEqual(change);
});
