interface PictureProps {
  /** A complete SVG text from the pictures package: our own drawing, its texts already escaped. */
  readonly svg: string;
  readonly className?: string;
}

/** Shows a drawing of the pictures package. */
export function Picture({ svg, className }: PictureProps) {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the text is drawn by @tapside/pictures, which escapes what it is given
  return <span className={className ?? "picture"} dangerouslySetInnerHTML={{ __html: svg }} />;
}
