import { Duplex, PDFDocument, PDFName, PrintScaling, type PDFFont } from '@cantoo/pdf-lib';
import * as fontkit from 'fontkit';
import { makeLettering, type Lettering } from './lettering';
import type { Size } from './paper';
import { makePen, POINTS, type Pen } from './pen';

/** A PDF being written: pages in mm, one typeface. Source of the format: ISO 32000-1. */
export interface PrintDocument {
  readonly pdf: PDFDocument;
  readonly face: PDFFont;
  readonly letters: Lettering;
}

const FONT = 'F1';

/** `font`: the bytes of a TrueType face; only the characters used are stored. */
export async function beginDocument(font: Uint8Array): Promise<PrintDocument> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.registerFontkit(fontkit);
  const face = await pdf.embedFont(font, { subset: true, features: { liga: false, kern: false } });
  return { pdf, face, letters: makeLettering(face) };
}

/** A page of some size, mm, with what is drawn on it. */
export function addPageTo(
  { pdf, face, letters }: PrintDocument,
  { width, height }: Size,
  draw: (pen: Pen) => void,
): void {
  const pen = makePen(letters, FONT);
  draw(pen);
  const page = pdf.addPage([width * POINTS, height * POINTS]);
  page.node.setFontDictionary(PDFName.of(FONT), face.ref);
  page.node.addContentStream(pdf.context.register(pdf.context.flateStream(pen.content())));
}

/** The file, without a date: viewers are asked not to scale it, printers to print one side. */
export async function endDocument({ pdf, letters }: PrintDocument, title: string): Promise<Uint8Array> {
  pdf.setTitle(letters.printable(title));
  pdf.setProducer('bendbuck');
  pdf.setLanguage('en');
  const preferences = pdf.catalog.getOrCreateViewerPreferences();
  preferences.setPrintScaling(PrintScaling.None);
  preferences.setDuplex(Duplex.Simplex);
  preferences.setPickTrayByPDFSize(true);
  return pdf.save();
}
