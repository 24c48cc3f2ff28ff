const LONGEST_SIDE_PX = 1600;

/** A photo as JPEG with at most 1600 px on its longer side. Redrawing also drops position data. */
export async function shrinkPhoto(file: Blob): Promise<ArrayBuffer> {
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
