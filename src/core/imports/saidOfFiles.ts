/** Where a folder was dropped. */
export const isFolder = 'it is a folder; drop the file itself';

/** Where the device had a file for this app and did not give it. */
export const notHandedOver = 'this device has not handed it over; open it with Import';

/** Where what is cut is asked about: until that is answered, nothing else changes. */
export const questionFirst = 'a question about cuts is open; answer it, and import the file again';

/** Where other files came with the one that is imported. */
export const oneAtATime = (more: number): string =>
	`${more === 1 ? 'The other file was' : `The ${more} other files were`} not imported. Import one file at a time.`;
