import { shrinkPhoto } from "../visit/shrink-photo.ts";

/** Opens the camera, or the files where there is none; nothing when the person called it off. */
export function pickFile(accept: string, camera = false): Promise<File | undefined> {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = accept;
  if (camera) input.setAttribute("capture", "environment");
  return new Promise((done) => {
    input.addEventListener("cancel", () => done(undefined));
    input.addEventListener("change", () => done(input.files?.[0]));
    input.click();
  });
}

/** A photo as JPEG, made smaller and without its position. */
export async function pickPhoto(): Promise<ArrayBuffer | undefined> {
  const file = await pickFile("image/*", true);
  return file && shrinkPhoto(file);
}
