/** What a browser answers over WebDriver BiDi, as much of it as is read here. */
type Answer =
	| { readonly type: 'success'; readonly id: number; readonly result: unknown }
	| { readonly type: 'error'; readonly id: number | null; readonly error: string; readonly message: string }
	| { readonly type: 'event'; readonly method: string; readonly params: unknown };

/** A connection to a browser that speaks WebDriver BiDi: commands go out over a web socket, answers come by number. */
export class BiDi {
	readonly #socket: WebSocket;
	readonly #waiting = new Map<number, { resolve: (result: unknown) => void; reject: (cause: Error) => void }>();
	#last = 0;

	private constructor(socket: WebSocket) {
		this.#socket = socket;
		socket.addEventListener('message', ({ data }) => this.#hear(JSON.parse(String(data)) as Answer));
		socket.addEventListener('close', () => {
			for (const { reject } of this.#waiting.values()) reject(new Error('the browser hung up'));
			this.#waiting.clear();
		});
	}

	/** Connects to a browser that listens at a port of this machine, and begins a session. */
	static async connect(port: number): Promise<BiDi> {
		const socket = new WebSocket(`ws://127.0.0.1:${port}/session`);
		await new Promise<void>((resolve, reject) => {
			socket.addEventListener('open', () => resolve());
			socket.addEventListener('error', () => reject(new Error(`nobody answers at port ${port}`)));
		});
		const biDi = new BiDi(socket);
		await biDi.send('session.new', { capabilities: {} });
		return biDi;
	}

	/**
	 * Sends a command. What it gives is named by the caller, after the standard.
	 * @throws Error with what the browser says, if it refuses
	 */
	send<Result>(method: string, params: object): Promise<Result> {
		const id = ++this.#last;
		const answered = new Promise<unknown>((resolve, reject) => this.#waiting.set(id, { resolve, reject }));
		this.#socket.send(JSON.stringify({ id, method, params }));
		return answered as Promise<Result>;
	}

	close(): void {
		this.#socket.close();
	}

	#hear(answer: Answer): void {
		if (answer.type === 'event' || answer.id === null) return;
		const waiting = this.#waiting.get(answer.id);
		this.#waiting.delete(answer.id);
		if (answer.type === 'success') waiting?.resolve(answer.result);
		else waiting?.reject(new Error(`${answer.error}: ${answer.message}`));
	}
}
