/** CRC-32, as ZIP and PNG have it. Source: PNG (ISO/IEC 15948), annex D */
export function checksum(bytes: Uint8Array): number {
	let sum = 0xffffffff;
	for (const byte of bytes) sum = table[(sum ^ byte) & 255]! ^ (sum >>> 8);
	return (sum ^ 0xffffffff) >>> 0;
}

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
	let sum = byte;
	for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
	return sum;
});
