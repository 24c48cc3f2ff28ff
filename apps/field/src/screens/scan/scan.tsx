import { readSticker, unitOfSticker } from "@tapside/book";
import { useId, useRef, useState } from "react";
import { useLocation } from "wouter";
import { CallScreen } from "../../call/call.tsx";
import { Band } from "../../look/band.tsx";
import { pickFile } from "../../look/pick-photo.ts";
import { Screen } from "../../look/screen.tsx";
import { useBook } from "../../store/use-book.ts";
import { bookWords as words } from "../../words/book.ts";
import { officeWords } from "../../words/office.ts";
import { sayWhyNot } from "../../words/say-why-not.ts";
import { PickUnit } from "../pick-unit.tsx";
import { useUnitLines } from "../use-unit-lines.ts";
import { pixelsOf, readSign } from "./read-sign.ts";
import { useCamera } from "./use-camera.ts";

const SAYS = {
  starting: officeWords.starting,
  looking: officeWords.scanning,
  slow: officeWords.slow,
  refused: officeWords.cameraRefused,
} as const;

/** Which box is this? By camera, by a photo of the sticker, or by its short code typed. */
export function ScanScreen() {
  const { snapshot } = useBook();
  const [, navigate] = useLocation();
  const [typed, setTyped] = useState("");
  const [problem, setProblem] = useState("");
  const id = useId();
  const video = useRef<HTMLVideoElement>(null);
  /** Opens the unit of a code, or the question which unit a new sticker goes on. */
  const open = (text: string): boolean => {
    const call = /#(\/called\/\S+)/.exec(text)?.[1];
    if (call) {
      location.hash = call;
      return true;
    }
    const unit = /#\/unit\/([^/?\s]+)/.exec(text)?.[1];
    if (unit && snapshot.book.unit.has(unit)) {
      navigate(`/unit/${unit}`);
      return true;
    }
    const code = readSticker(text);
    if (code.kind !== "known") {
      setProblem(sayWhyNot(code));
      return false;
    }
    navigate(`/s/${code.value}`);
    return true;
  };
  const state = useCamera(video, open);
  const fromPhoto = async () => {
    const file = await pickFile("image/*", true);
    if (!file) return;
    const picture = await createImageBitmap(file).catch(() => undefined);
    const pixels = picture && pixelsOf(picture, picture.width, picture.height);
    const text = pixels && (await readSign(pixels));
    if (text) open(text);
    else setProblem(officeWords.unreadablePhoto);
  };
  return (
    <Screen
      title={officeWords.scanTitle}
      back={{ label: words.back, to: "/" }}
      middle={{ label: words.photo, onPress: () => void fromPhoto() }}
      next={{ label: officeWords.openCode, hint: typed, onPress: () => void open(typed) }}
    >
      {state === "refused" ? null : (
        <video
          ref={video}
          className="scan-view"
          muted
          playsInline
          tabIndex={-1}
          aria-label={officeWords.scanning}
        />
      )}
      <p className="band" role="status">
        {problem || SAYS[state]}
      </p>
      <div className="band entry">
        <label htmlFor={id}>{officeWords.typeCode}</label>
        <input
          id={id}
          value={typed}
          autoComplete="off"
          autoCapitalize="characters"
          onChange={(event) => {
            setTyped(event.target.value);
            setProblem("");
          }}
          onKeyDown={(event) => event.key === "Enter" && open(typed)}
        />
      </div>
      <Band press={{ onPress: () => void fromPhoto() }}>{officeWords.photoOfSticker}</Band>
    </Screen>
  );
}

/** Where a sticker leads: to its unit, or to the question which unit it goes on; on a phone without a book it is the kitchen that asks. */
export function StickerScreen({ code }: { code: string }) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const lines = useUnitLines();
  const read = readSticker(decodeURIComponent(code));
  const unit = read.kind === "known" ? unitOfSticker(snapshot.book, read.value) : undefined;
  if (snapshot.book.unit.size === 0) return <CallScreen code={code} />;
  const stick = (to: string) => {
    if (read.kind === "known") void live.write("unit", to, { sticker: read.value });
    navigate(`/unit/${to}`);
  };
  return (
    <Screen
      title={
        read.kind === "known"
          ? unit
            ? officeWords.stickerOf
            : officeWords.newSticker(read.value)
          : officeWords.scanTitle
      }
      back={{ label: words.back, to: "/scan" }}
      next={
        unit
          ? {
              label: words.unit,
              hint: lines.find((line) => line.id === unit)?.title ?? "",
              to: `/unit/${unit}`,
            }
          : { label: words.book, to: "/" }
      }
    >
      {read.kind === "known" ? null : <p className="band">{sayWhyNot(read)}</p>}
      {unit ? (
        <Band press={{ to: `/unit/${unit}` }}>
          <strong>{lines.find((line) => line.id === unit)?.title}</strong>
        </Band>
      ) : null}
      {read.kind === "known" && !unit ? (
        <>
          <Band tint>{officeWords.stickOn}</Band>
          <PickUnit onPick={stick} />
        </>
      ) : null}
    </Screen>
  );
}
