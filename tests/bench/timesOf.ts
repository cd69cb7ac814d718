/** What the browser's profiler writes down: which function ran, called by which, at each of its looks. Times in microseconds. */
export interface CpuProfile {
	readonly nodes: readonly {
		readonly id: number;
		readonly callFrame: { readonly functionName: string; readonly url: string; readonly lineNumber: number };
		readonly children?: readonly number[];
	}[];
	readonly samples: readonly number[];
	readonly timeDeltas: readonly number[];
}

/** What a function took in all, in milliseconds: by itself, and with all that it called. */
export interface TimeOf {
	readonly name: string;
	readonly selfMs: number;
	readonly totalMs: number;
}

/** What is no work: the thread waits, or is busy with something else than scripts. */
const noWork = new Set(['(idle)', '(root)']);

/** The time of each function, the longest with its calls first. A function that calls itself is counted once. */
export function timesOf({ nodes, samples, timeDeltas }: CpuProfile): readonly TimeOf[] {
	const byId = new Map(nodes.map((node) => [node.id, node]));
	const callerOf = new Map(nodes.flatMap(({ id, children = [] }) => children.map((child) => [child, id] as const)));
	const nameOf = (id: number) => {
		const { functionName, url, lineNumber } = byId.get(id)!.callFrame;
		const file = url.slice(url.lastIndexOf('/') + 1);
		return `${functionName || '(no name)'}${file === '' ? '' : ` ${file}:${lineNumber + 1}`}`;
	};
	const times = new Map<string, { selfMs: number; totalMs: number }>();
	for (const [place, id] of samples.entries()) {
		const ms = (timeDeltas[place + 1] ?? 0) / 1000; // a look lasts until the next
		const seen = new Set<string>();
		for (let at: number | undefined = id; at !== undefined; at = callerOf.get(at)) {
			const name = nameOf(at);
			if (noWork.has(name) || seen.has(name)) continue;
			seen.add(name);
			const time = times.get(name) ?? { selfMs: 0, totalMs: 0 };
			times.set(name, { selfMs: time.selfMs + (at === id ? ms : 0), totalMs: time.totalMs + ms });
		}
	}
	return [...times].map(([name, time]) => ({ name, ...time })).sort((a, b) => b.totalMs - a.totalMs);
}
