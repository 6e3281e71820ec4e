/**
 * The plain e-mail that a piece's page offers without JavaScript, read as far
 * as it goes. Buyers change such mails, so each part is looked for by itself,
 * nothing is believed, and what could not be read is named.
 */
import { textsOf, type Piece } from '#catalogue/model/catalogue.ts';
import type { Component } from '#core/design/component.ts';
import { parseLength } from '#core/units/length.ts';
import type { LengthUnit } from '#core/units/unit.ts';
import { CAPS } from '#order/document.ts';
import { LANGS, type Lang } from '#words/lang.ts';
import type { PlainRemark } from '#words/plainRemark.ts';
import { orderWords, plainMailWords } from '#words/words.ts';
import { fold } from '../book/open.ts';
import { EMPTY_HAND, MAIL_CAP, type HandFields } from './handForm.ts';
import { readAddress } from './plainAddress.ts';
import { plainLines } from './plainText.ts';

export type PlainOrder = {
  readonly fields: HandFields;
  /** What couldn't be read, or was taken for granted. */
  readonly remarks: readonly PlainRemark[];
};

export type PlainDesk = {
  readonly pieces: readonly Piece[];
  /** The shop's own address, which is nobody's who orders. */
  readonly shopEmail: string;
  /** The shop's unit, for a bare number. */
  readonly unit: LengthUnit;
  /** Where the mail doesn't tell. */
  readonly lang: Lang;
};

/** `(weir-light 1a2b3c4d5e6f)`, wherever a line was broken. */
const MARK = /\(\s*([a-z\d]+(?:-\s*[a-z\d]+)*)\s+([\da-f]{12})\s*\)/;
const ADDRESS = /[^\s@<>()[\]\\,;:"]+@[^\s@<>()[\]\\,;:"]+\.[^\s@<>()[\]\\,;:".]+/;
const MEASURED = /\d[\d.,/ ½¼¾⅛⅜⅝⅞]*(?:inch(?:es)?\b|in\b|["”″]|cm\b|mm\b|zoll\b)/i;

/** The fields of an order out of a plain e-mail's text, its sender and subject above it where they are known. */
export function readPlain(text: string, desk: PlainDesk): PlainOrder {
  const plain = plainLines(text.slice(0, MAIL_CAP));
  if (plain.trim() === '') {
    return { fields: { ...EMPTY_HAND, way: 'mail' }, remarks: [{ code: 'empty' }] };
  }
  const lang = langOf(plain) ?? desk.lang;
  const { values, rest } = labelled(plain, lang);
  const remarks: PlainRemark[] = [];
  const found = pieceOf(plain, desk.pieces);
  if (found === null) remarks.push({ code: 'piece' });
  else if (found.revision !== null && found.revision !== found.piece.revision) {
    remarks.push({ code: 'revision' });
  }
  // What lies finished has neither size, sit nor hand to be asked.
  const ready = fold(values.size ?? '').includes(fold(orderWords(lang).asItLies));
  const size = ready
    ? { text: '', remarks: [] }
    : sizeOf(values.size ?? '', rest, lang === 'de' ? 'cm' : desk.unit);
  remarks.push(...size.remarks);
  const hand = handOf(values.hand ?? '', lang);
  if (hand === null && !ready) remarks.push({ code: 'hand' });
  const sender = senderOf(plain, desk.shopEmail);
  const name = oneLine(values.name ?? '') || sender.name;
  if (name === '') remarks.push({ code: 'name' });
  if (sender.email === '') remarks.push({ code: 'email' });
  const address = readAddress(values.sendTo ?? '', name);
  if (address !== null) remarks.push({ code: 'address' });
  remarks.push({ code: 'quantity' });
  if (!ready) remarks.push({ code: 'sit' });
  const fields: HandFields = {
    ...EMPTY_HAND,
    ...address,
    piece: found?.piece.id ?? '',
    ...(ready ? { made: 'ready' } : partsIn(plain, found?.piece)),
    size: size.text,
    hand: hand ?? EMPTY_HAND.hand,
    name: name.slice(0, CAPS.name),
    email: sender.email,
    note: noteOf(rest, lang),
    lang,
    way: 'mail',
    mail: text.slice(0, MAIL_CAP),
  };
  return { fields, remarks };
}

/** Parts offered with the piece that the mail names, each where it names one alone. */
function partsIn(plain: string, piece: Piece | undefined): Partial<HandFields> {
  if (piece === undefined) return {};
  const text = fold(plain.replace(/\s+/g, ' '));
  const { alternatives, germanNames } = piece;
  const named = (parts: readonly Component[]): Component | undefined => {
    const found = parts.filter(({ id, name }) =>
      [name, germanNames[id]].some((one) => one !== undefined && text.includes(fold(one))),
    );
    return found.length === 1 ? found[0] : undefined;
  };
  const clasp = named(alternatives.clasps.map((one) => one.clasp));
  const pendant = named(alternatives.pendants);
  return { ...(clasp && { clasp: clasp.id }), ...(pendant && { pendant: pendant.id }) };
}

/** True for a text that reads like such an e-mail: a piece with its revision, or most of the labels. */
export function looksPlain(text: string): boolean {
  const plain = plainLines(text.slice(0, MAIL_CAP));
  return MARK.test(plain) || LANGS.some((lang) => Object.keys(labelled(plain, lang).values).length >= 3);
}

type Label = keyof ReturnType<typeof plainMailWords>['labels'];
type Values = Partial<Record<Label, string>>;

/** The language that most labels are in; null where there are none. */
function langOf(plain: string): Lang | null {
  const counts = LANGS.map((lang) => ({ lang, many: Object.keys(labelled(plain, lang).values).length }));
  const best = counts.toSorted((a, b) => b.many - a.many)[0];
  return best === undefined || best.many === 0 ? null : best.lang;
}

/** What stands behind each label, up to the next label or an empty line; and all other lines. */
function labelled(plain: string, lang: Lang): { values: Values; rest: string } {
  const labels = Object.entries(plainMailWords(lang).labels) as [Label, string][];
  const values: Values = {};
  const rest: string[] = [];
  let open: Label | null = null;
  for (const line of plain.split('\n')) {
    const begun = labelIn(line, labels);
    if (begun !== null && values[begun.label] === undefined) {
      open = begun.label;
      values[open] = begun.value;
    } else if (open !== null && goesOn(open, values[open] ?? '', line)) {
      values[open] = [values[open], line.trim()].filter(Boolean).join('\n');
    } else {
      open = null;
      rest.push(line);
    }
  }
  return { values, rest: rest.join('\n') };
}

/** A name may stand below its label, and an address on several lines; all else stands behind its label. */
function goesOn(label: Label, value: string, line: string): boolean {
  if (label === 'sendTo') return value === '' || line.trim() !== '';
  return label === 'name' && value === '' && line.trim() !== '';
}

function labelIn(line: string, labels: readonly [Label, string][]): { label: Label; value: string } | null {
  const [, head = '', value = ''] =
    /^[\s*•_-]*([^:=]{1,60}?)[\s*_]*(?:[:=\t]|\s[-–—]\s)(.*)$/.exec(line) ?? [];
  const written = fold(head.trim());
  const known = labels.find(([, label]) => fold(label) === written);
  return known === undefined ? null : { label: known[0], value: value.replace(/^[\s*_]+|[\s*_]+$/g, '') };
}

function pieceOf(plain: string, pieces: readonly Piece[]): { piece: Piece; revision: string | null } | null {
  const [, id = '', revision = ''] = MARK.exec(plain) ?? [];
  const marked = pieces.find((piece) => piece.id === id.replace(/\s/g, ''));
  if (marked !== undefined) return { piece: marked, revision };
  const words = fold(plain.replace(/\s+/g, ' '));
  // The longest name, since one may be part of another.
  const named = pieces
    .flatMap((piece) => LANGS.map((lang) => ({ piece, name: fold(textsOf(piece, lang).name) })))
    .filter(({ name }) =>
      new RegExp(`(?<![\\p{L}\\p{N}])${escaped(name)}(?![\\p{L}\\p{N}])`, 'u').test(words),
    )
    .toSorted((a, b) => b.name.length - a.name.length)[0];
  return named === undefined ? null : { piece: named.piece, revision: null };
}

/** The size as words and the same in brackets; where no label stands before it, the one measure there is in the text. */
function sizeOf(value: string, rest: string, unit: LengthUnit): { text: string; remarks: PlainRemark[] } {
  const [, first = '', second = ''] = /^([^(]*)(?:\(([^)]*)\))?/s.exec(oneLine(value)) ?? [];
  const text = measureIn(first, unit) ?? measureIn(second, unit) ?? measureIn(rest, null);
  if (text === null) return { text: '', remarks: [{ code: 'size' }] };
  const other = measureIn(second, unit);
  const [one, two] = [parseLength(text, unit), parseLength(other ?? text, unit)];
  // Both were written from one length: to the eighth of an inch or tenth of a centimetre, and to the millimetre.
  const alike = one.ok && two.ok && Math.abs(one.mm - two.mm) <= 3;
  return {
    text,
    remarks: alike ? [] : [{ code: 'two-sizes', first: text, second: other ?? '' }],
  };
}

/** A length as it stands in a text; a bare number only where `unit` says what it would be. */
function measureIn(text: string, unit: LengthUnit | null): string | null {
  const whole = text.trim();
  if (unit !== null && parseLength(whole, unit).ok) return whole;
  const found = MEASURED.exec(text)?.[0].trim();
  return found !== undefined && parseLength(found, 'mm').ok ? found : null;
}

/** The one hand that is left standing; null where both are, or none. */
function handOf(value: string, lang: Lang): 'left' | 'right' | null {
  const { hands } = plainMailWords(lang);
  const words = fold(value).match(/\p{L}+/gu) ?? [];
  const says = (hand: 'left' | 'right'): boolean => words.some((word) => word.startsWith(fold(hands[hand])));
  if (says('left') === says('right')) return null;
  return says('left') ? 'left' : 'right';
}

/** The last sender named above the order, or else any address that isn't the shop's. */
function senderOf(plain: string, shopEmail: string): { name: string; email: string } {
  const lines = [...plain.matchAll(/^[*_ ]*(?:from|von|reply-to|antwort an)[*_ ]*:(.*)$/gim)];
  const senders = lines.flatMap(([, text = '']) => {
    const email = ADDRESS.exec(text)?.[0] ?? '';
    const name = text
      .replace(ADDRESS, '')
      .replace(/\[?mailto:[^\]\s]*\]?|[<>"()[\]]/g, '')
      .trim();
    return email === '' || fold(email) === fold(shopEmail) ? [] : [{ name, email }];
  });
  const last = senders.at(-1);
  if (last !== undefined) return last;
  const others = [...plain.matchAll(new RegExp(ADDRESS, 'g'))].map(([email]) => email);
  return { name: '', email: others.find((email) => fold(email) !== fold(shopEmail)) ?? '' };
}

const HEADER =
  /^[*_ ]*(?:from|von|to|an|sent|gesendet|date|datum|subject|betreff|cc|reply-to|antwort an)[*_ ]*:.*$/gim;
const BETWEEN =
  /^[ \t]*(?:-{2,}.*|_{5,}|on .{5,120} wrote:|am .{5,120} schrieb.{0,120}:|begin forwarded message:?)[ \t]*$/gim;

/** What the buyer wrote of her own: all that is neither the prepared mail nor what mail programs add. */
function noteOf(rest: string, lang: Lang): string {
  const { greeting, wish, mark } = plainMailWords(lang);
  const [before = '', after = ''] = wish('\n').split('\n');
  const [markBefore = ''] = mark('\n').split('\n');
  const prepared = new RegExp(`${loose(before.trim())}[\\s\\S]{1,240}?${loose(after.trim())}`, 'i');
  const marked = new RegExp(`${loose(markBefore.replace(/\($/, '').trim())}\\s*${MARK.source}`, 'i');
  return rest
    .replace(/\n-- \n[\s\S]*$/, '\n')
    .replace(HEADER, '')
    .replace(BETWEEN, '')
    .replace(marked, '')
    .replace(prepared, '')
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => fold(line) !== fold(greeting))
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim()
    .slice(0, CAPS.note);
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();
const escaped = (text: string): string => text.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&');
/** A text as a pattern that minds no line breaks. */
const loose = (text: string): string => escaped(text).replace(/\s+/g, '\\s+');
