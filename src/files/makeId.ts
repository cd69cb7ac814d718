import { bytesOfId, madeId } from '../core/values/madeId.ts';

/** A name for a row or a show that no other has; `isMadeId` knows such names again. */
export const makeId = (): string => madeId(crypto.getRandomValues(new Uint8Array(bytesOfId)));
