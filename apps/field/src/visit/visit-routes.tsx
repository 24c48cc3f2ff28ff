import { SLOTS } from "@tapside/records";
import { lazy, Suspense } from "react";
import { Route, Switch, useParams } from "wouter";
import { Gone } from "../screens/gone.tsx";
import { TimerStrip } from "../timers/timer-strip.tsx";
import { Timers } from "../timers/timers.tsx";
import { Acceptance } from "./acceptance.tsx";
import { AdviceScreen } from "./advice.tsx";
import { Also } from "./also.tsx";
import { Ask } from "./ask.tsx";
import { Bypass } from "./bypass.tsx";
import { Check } from "./check.tsx";
import { Counters } from "./counters.tsx";
import { Drips } from "./drips.tsx";
import { Entry } from "./entry.tsx";
import { ExpectedOfUnit, ExpectedOfVisit } from "./expected.tsx";
import { Judgement } from "./judgement.tsx";
import { KindScreen } from "./kind.tsx";
import { Leave } from "./leave.tsx";
import { Look } from "./look.tsx";
import { NoAccess } from "./no-access.tsx";
import { Optional } from "./optional.tsx";
import { Overview } from "./overview.tsx";
import type { CheckId } from "./plans.ts";
import { PointsOfUnit, PointsOfVisit } from "./points.tsx";
import { Sign } from "./sign.tsx";
import { Stopwatch } from "./stopwatch.tsx";
import { Times } from "./times.tsx";
import { type OpenVisit, useVisit } from "./use-visit.ts";
import { Valves } from "./valves.tsx";
import { visitWords } from "./words.ts";
import { WorkScreen } from "./work.tsx";
import "./visit.css";
import { withWords } from "../words/with-words.ts";

const RecordScreen = lazy(() => import("./record.tsx"));
const CauseScreen = lazy(withWords(["cause"], () => import("../cause/cause.tsx")));
const CauseTest = lazy(withWords(["cause"], () => import("../cause/cause-test.tsx")));

/** Everything under `/visit/:id`. */
export function VisitRoutes() {
  return (
    <Switch>
      <Route path="/visit/:id">{() => <Step show={(open) => <Overview open={open} />} />}</Route>
      <Route path="/visit/:id/ask">{() => <Step show={(open) => <Ask open={open} />} />}</Route>
      <Route path="/visit/:id/bypass">{() => <Step show={(open) => <Bypass open={open} />} />}</Route>
      <Route path="/visit/:id/look">{() => <Step show={(open) => <Look open={open} />} />}</Route>
      <Route path="/visit/:id/counters">{() => <Step show={(open) => <Counters open={open} />} />}</Route>
      <Route path="/visit/:id/read/:phase/:slot">{() => <Reading />}</Route>
      <Route path="/visit/:id/also">{() => <Step show={(open) => <Also open={open} />} />}</Route>
      <Route path="/visit/:id/expected">
        {() => <Step show={(open) => <ExpectedOfVisit open={open} />} />}
      </Route>
      <Route path="/visit/:id/points">{() => <Step show={(open) => <PointsOfVisit open={open} />} />}</Route>
      <Route path="/unit/:id/expected">{({ id }) => <ExpectedOfUnit id={id} key={id} />}</Route>
      <Route path="/unit/:id/points">{({ id }) => <PointsOfUnit id={id} key={id} />}</Route>
      <Route path="/unit/:id/start">{({ id }) => <KindScreen id={id} key={id} />}</Route>
      <Route path="/visit/:id/check/:check">
        {() => (
          <Step show={(open, { check }) => <Check open={open} check={check as CheckId} key={check} />} />
        )}
      </Route>
      <Route path="/visit/:id/drips">{() => <Step show={(open) => <Drips open={open} />} />}</Route>
      <Route path="/visit/:id/acceptance">{() => <Step show={(open) => <Acceptance open={open} />} />}</Route>
      <Route path="/visit/:id/noAccess">{() => <Step show={(open) => <NoAccess open={open} />} />}</Route>
      <Route path="/visit/:id/timers">{() => <Step show={(open) => <Timers open={open} />} />}</Route>
      <Route path="/visit/:id/advice">{() => <Step show={(open) => <AdviceScreen open={open} />} />}</Route>
      <Route path="/visit/:id/times">{() => <Step show={(open) => <Times open={open} />} />}</Route>
      <Route path="/visit/:id/optional">{() => <Step show={(open) => <Optional open={open} />} />}</Route>
      <Route path="/visit/:id/judgement">{() => <Step show={(open) => <Judgement open={open} />} />}</Route>
      <Route path="/visit/:id/work/:task">
        {() => (
          <Step
            show={(open, { task }) => (
              <WorkScreen open={open} task={decodeURIComponent(task ?? "")} key={task} />
            )}
          />
        )}
      </Route>
      <Route path="/visit/:id/cause">
        {() => (
          <Step
            show={(open) => (
              <Suspense fallback={<p className="band">{visitWords.findCause}</p>}>
                <CauseScreen open={open} />
              </Suspense>
            )}
          />
        )}
      </Route>
      <Route path="/visit/:id/cause/:test">
        {() => (
          <Step
            show={(open, { test }) => (
              <Suspense fallback={<p className="band">{visitWords.findCause}</p>}>
                <CauseTest open={open} test={test ?? ""} key={test} />
              </Suspense>
            )}
          />
        )}
      </Route>
      <Route path="/visit/:id/valves">{() => <Step show={(open) => <Valves open={open} />} />}</Route>
      <Route path="/visit/:id/sign">{() => <Step show={(open) => <Sign open={open} />} />}</Route>
      <Route path="/visit/:id/leave">{() => <Step show={(open) => <Leave open={open} />} />}</Route>
      <Route path="/visit/:id/record">
        {() => (
          <Step
            show={(open) => (
              <Suspense fallback={<p className="band">{visitWords.makingPdf}</p>}>
                <RecordScreen open={open} />
              </Suspense>
            )}
          />
        )}
      </Route>
      <Route component={Gone} />
    </Switch>
  );
}

function Step({
  show,
}: {
  show: (open: OpenVisit, params: Record<string, string | undefined>) => React.ReactNode;
}) {
  const params = useParams();
  const open = useVisit(params.id ?? "");
  if (!open) return <Gone />;
  return (
    <>
      <TimerStrip open={open} />
      {show(open, params)}
    </>
  );
}

function Reading() {
  return (
    <Step
      show={(open, params) => {
        const key = `${params.phase}:${params.slot}`;
        const timed = SLOTS[slotOf(params).slot]?.quantity === "flow";
        return timed ? (
          <Stopwatch open={open} key={key} {...slotOf(params)} />
        ) : (
          <Entry open={open} key={key} {...slotOf(params)} />
        );
      }}
    />
  );
}

function slotOf(params: Record<string, string | undefined>) {
  return {
    phase: (params.phase === "asLeft" ? "asLeft" : "asFound") as "asFound" | "asLeft",
    slot: (params.slot ?? "feedTds") as import("@tapside/records").SlotId,
  };
}
