declare module "svg-to-pdfkit" {
  export default function svgToPdf(
    doc: PDFKit.PDFDocument,
    svg: string,
    x: number,
    y: number,
    options: Readonly<Record<string, unknown>>,
  ): void;
}
