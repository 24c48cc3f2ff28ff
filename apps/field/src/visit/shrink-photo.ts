const LONGEST_SIDE_PX = 1600;

/** A photo as JPEG with at most 1600 px on its longer side. A picture this phone cannot draw is kept as it came. */
export const shrinkPhoto = (file: Blob): Promise<ArrayBuffer> =>
  redrawn(file).catch(() => file.arrayBuffer());

/** Redrawing also drops position data. */
async function redrawn(file: Blob): Promise<ArrayBuffer> {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, LONGEST_SIDE_PX / Math.max(picture.width, picture.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(picture.width * scale);
  canvas.height = Math.round(picture.height * scale);
  canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/jpeg", 0.82));
  return (blob ?? file).arrayBuffer();
}
