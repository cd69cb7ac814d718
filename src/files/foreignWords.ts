import { folded } from '../core/imports/namedDays.ts';

/**
 * Words of headers in German, French, Italian, Spanish and Dutch, without accents, by the English word that stands for the
 * same. What a word leaves in doubt in English it leaves in doubt here: `Breite` is a width, of what has to be asked.
 */
const wordsOfEnglish: Readonly<Record<string, string>> = {
	title: 'titel bildtitel werktitel titre titolo titulo',
	number: 'nummer numero num n° nº № katalognummer',
	width: 'breite largeur larghezza ancho anchura breedte',
	height: 'hohe hoehe hauteur altezza alto altura hoogte',
	size: 'grosse groesse masse masze mass abmessung abmessungen taille dimensioni dimensiones medidas misure afmeting afmetingen formaat mesures',
	price: 'preis verkaufspreis prix prezzo precio prijs verkoopprijs',
	maker:
		'kunstler kuenstler kunstlerin kuenstlerin artiste artista kunstenaar kunstenares fotograf fotografin photographe fotografo fotografa fotograaf',
	author: 'autor autorin auteur autore',
	edition: 'auflage tirage edizione tiratura edicion tirada oplage editie',
	copies: 'anzahl stuck stueck stuckzahl quantite quantita cantidad aantal',
	note: 'bemerkung bemerkungen anmerkung anmerkungen remarque remarques nota notas osservazioni opmerking opmerkingen',
	picture: 'bild motiv immagine imagen beeld afbeelding',
	photo: 'foto',
	work: 'werk oeuvre œuvre opera obra',
	paper: 'papier carta papel',
	sheet: 'blatt feuille foglio hoja blad',
	mount: 'passepartout paspartu paspartout',
	frame: 'rahmen cadre cornice marco lijst',
	window: 'fenster ausschnitt ouverture apertura venster',
	shape: 'seitenverhaltnis proportion proportions proporzioni proporciones verhouding',
	medium: 'technik drucktechnik tecnica techniek druktechniek',
	year: 'jahr entstehungsjahr annee anno ano jaar jaartal',
	net: 'netto nettopreis nettoprijs',
	value: 'wert versicherungswert valeur valore valor waarde verzekeringswaarde verzekerwaarde',
	stage: 'arbeitsstand',
	status: 'stand etat stato estado',
	buyer: 'kaufer kaeufer kauferin kaeuferin acheteur acheteuse acquirente compratore comprador compradora koper',
	material: 'materiale materiales materiaal materiau materiaux',
	unit: 'einheit einheiten unite unites unita unidad unidades eenheid eenheden',
};

/** Small words that stand between others and say nothing here. */
const smallWords = new Set(
	'de du des la le les l d of the del della dello dei delle di da el los las van het een der die das vom zum lfd'.split(
		' ',
	),
);

const english: ReadonlyMap<string, string> = new Map(
	Object.entries(wordsOfEnglish).flatMap(([word, others]) => others.split(' ').map((other) => [other, word] as const)),
);

/** Parts of words that German and Dutch write as one: `Bildbreite`, `papierformaat`. */
const [firstParts, lastParts] = [
	/^(bild|motiv|blatt|papier|rahmen|passepartout|fenster|ausschnitt|beeld|afbeeldings?|lijst|blad|venster)/,
	/^(breite|hohe|hoehe|grosse|groesse|mass|masse|format|breedte|hoogte|formaat|afmeting|afmetingen)$/,
];

/** The same few words are read again for each of what may stand between cells, and in each line that may name the columns. */
const remembered = new Map<string, readonly string[]>();
const mostRemembered = 20_000;

/** A word of a header in English; as it stands where it is in none of these languages. */
function inEnglish(word: string): readonly string[] {
	if (!/^[^\d]/.test(word)) return [word];
	const known = remembered.get(word);
	if (known) return known;
	const read = readAnew(word);
	if (remembered.size >= mostRemembered) remembered.clear();
	remembered.set(word, read);
	return read;
}

function readAnew(word: string): readonly string[] {
	const plain = folded(word).replaceAll('ß', 'ss');
	const known = english.get(plain);
	if (known !== undefined) return [known];
	const [, first] = firstParts.exec(plain) ?? [];
	const rest = first === undefined ? undefined : plain.slice(first.length);
	if (rest === undefined || !lastParts.test(rest)) return [word];
	const whole = english.get(first!.replace(/^afbeeldings?$/, 'afbeelding')) ?? first!;
	return [whole, rest === 'format' ? 'size' : (english.get(rest) ?? rest)];
}

/** The words of a header in English, without small words where others are left. */
export function wordsInEnglish(words: readonly string[]): readonly string[] {
	if (words.length > mostWords || words.every((word) => inEnglish(word)[0] === word)) return words;
	const meant = words.filter((word) => !smallWords.has(folded(word)));
	return (meant.length > 0 ? meant : words).flatMap(inEnglish);
}

/** A header of more words is a sentence. */
const mostWords = 8;
