import type { Diagnosis, FittedCauses } from "@tapside/diagnosis";
import { Fragment, useState } from "react";
import { Band } from "../look/band.tsx";
import { causeWords as words } from "./words.ts";
import "./cause.css";

/** How far a reading must move the odds to be named. */
const SPEAKS = 0.3;

/** The likeliest causes as bands: name, odds as a number and as length on a rail; for and against on a tap. */
export function OddsBands({ diagnosis, sizes }: { diagnosis: Diagnosis; sizes?: FittedCauses | undefined }) {
  const [open, setOpen] = useState<string>();
  const { step, causes, two } = diagnosis;
  const [one, other] = causes;
  const areAlike = step.kind === "test" && one && other && other.probability >= 0.15;
  return (
    <>
      {causes.map((row) => (
        <Band key={row.cause} press={{ onPress: () => setOpen(open === row.cause ? undefined : row.cause) }}>
          <span className="row">
            <span className="name">{words.causes[row.cause]}</span>
            <strong>{words.percent(row.probability)}</strong>
          </span>
          <OddsRail probability={row.probability} />
          {open === row.cause ? (
            <>
              <ForAndAgainst evidence={row.evidence} />
              {sizes ? <HowLarge fitted={sizes[row.cause]} /> : null}
            </>
          ) : null}
        </Band>
      ))}
      {two >= 0.1 ? <Band tint>{words.two(words.percent(two))}</Band> : null}
      {areAlike ? (
        <Band tint>
          {words.confused(
            words.causes[one.cause],
            words.causes[other.cause],
            words.tests[step.proposal.test],
          )}
        </Band>
      ) : null}
      {step.kind === "notSeparable" ? (
        <Band tint>{words.notSeparable(step.causes.map((cause) => words.causes[cause]).join(", "))}</Band>
      ) : null}
    </>
  );
}

/** The size of a cause, and what it would read beside what was read. */
function HowLarge({ fitted }: { fitted: FittedCauses[keyof FittedCauses] }) {
  if (!fitted) return <span className="odds-side note">{words.notFitted}</span>;
  const { size, beside } = fitted;
  const said = size?.measures.map(words.measure) ?? [];
  return (
    <>
      {size ? (
        <span className="odds-side">
          <strong>{words.howLarge}:</strong> {[words.grade(size.share, size.uShare), ...said].join(", ")}
        </span>
      ) : null}
      {beside.length > 0 ? (
        <span className="beside">
          <strong />
          <strong>{words.read}</strong>
          <strong>{words.wouldRead}</strong>
          {beside.map(({ sign, read, wouldRead }) => (
            <Fragment key={sign}>
              <span>{words.signs[sign]}</span>
              <span>{read === undefined ? "–" : words.signText(sign, read)}</span>
              <span>{words.signText(sign, wouldRead, 2)}</span>
            </Fragment>
          ))}
        </span>
      ) : null}
    </>
  );
}

const OddsRail = ({ probability }: { probability: number }) => (
  <span className="odds-rail" aria-hidden="true">
    <span style={{ width: `${Math.round(100 * probability)}%` }} />
  </span>
);

function ForAndAgainst({ evidence }: { evidence: Diagnosis["causes"][number]["evidence"] }) {
  const named = (side: 1 | -1) =>
    evidence.filter(({ shift }) => side * shift >= SPEAKS).map(({ sign }) => words.signs[sign]);
  const sides = [
    [words.speaksFor, named(1)],
    [words.against, named(-1)],
  ] as const;
  if (sides.every(([, list]) => list.length === 0)) return <span className="note">{words.noEvidence}</span>;
  return sides.map(([label, list]) =>
    list.length > 0 ? (
      <span className="odds-side" key={label}>
        <strong>{label}:</strong> {list.join(", ")}
      </span>
    ) : null,
  );
}
