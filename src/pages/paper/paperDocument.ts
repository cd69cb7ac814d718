import type { Component } from 'svelte';
import type { Getting } from '../../app/getting.svelte.ts';
import type { Packing } from '../../app/packing.svelte.ts';
import type { Session } from '../../app/session.svelte.ts';
import type { MeasureText } from '../../core/labels/fitLabel.ts';
import type { Paper } from '../../core/values/papers.ts';
import type { FilesOut } from '../filesOut.svelte.ts';

/** What documents are made from. Each is read where it is wanted, so that pages follow what they are made from. */
export interface PaperSource {
	readonly session: Session;
	readonly packing: Packing;
	readonly getting: Getting;
	/** The paper that is chosen. */
	readonly paper: Paper;
	/** How wide texts are in the type of the page. */
	readonly measure: MeasureText;
}

/** A document as it is at present. */
export interface MadeDocument<Props> {
	/** A page each: what the component gets that draws it. */
	readonly pages: readonly Props[];
	/** Where it has a paper of its own, whatever is chosen. */
	readonly paper?: Paper;
	/** What is not worked out yet, in a sentence: one waits before one prints. */
	readonly waits?: string | undefined;
	/** What else there is to say of it, in a sentence. */
	readonly says?: string | undefined;
}

/** An entry of the table of documents. */
interface Entry<Props> {
	/** The same for ever. */
	readonly id: string;
	/** On the screen. */
	readonly name: string;
	/** At the head of each page, where it is not the name. */
	readonly title?: string;
	/** The caution at the foot of each page; left out: that for cutting sheets. */
	readonly care?: string;
	/** Whether its pages fill the paper to its edges: nothing else stands on them. */
	readonly isBare?: boolean;
	/** Why there are no pages, in a sentence. */
	readonly none: string;
	readonly make: (source: PaperSource) => MadeDocument<Props>;
	/** Draws a page, inside its frame. */
	readonly component: Component<Props & object>;
	/** What there is to choose of how it comes out, shown while it is chosen. */
	readonly options?: Component<{ source: PaperSource; document: string }>;
	/** The same as a file, offered beside it. */
	readonly csv?: { readonly label: string; readonly give: (out: FilesOut, source: PaperSource) => Promise<void> };
}

/** A document that may be printed, whatever its pages are made of. */
export type PaperDocument = Entry<Record<string, unknown>>;

/** An entry of the table. What its component gets is what its pages are: that is checked here, and nowhere after. */
export const paperDocument = <Props>(entry: Entry<Props>) => entry as unknown as PaperDocument;
