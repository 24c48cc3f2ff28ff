import { lazy, Suspense, useEffect, useState } from "react";
import { Route, Router, Switch } from "wouter";
import { useHashLocation } from "wouter/use-hash-location";
import { BookScreen } from "./screens/book.tsx";
import { BookAtOnce } from "./screens/book-at-once.tsx";
import { KeepFirstList } from "./screens/keep-first-list.tsx";
import { MoreScreen } from "./screens/more.tsx";
import { NewVersion } from "./screens/new-version.tsx";
import { SettingsScreen } from "./screens/settings.tsx";
import { SiteScreen } from "./screens/site.tsx";
import { StorageState } from "./screens/storage-state.tsx";
import { prepareLines } from "./screens/use-unit-lines.ts";
import { WhereItWas } from "./screens/where-it-was.tsx";
import { bookName, DEMO, OWN, turnToBook } from "./store/book-name.ts";
import type { FirstList } from "./store/first-list.ts";
import { BookProvider, type LiveBook, useBook } from "./store/use-book.ts";
import { TimerWatch } from "./timers/timer-watch.tsx";
import { whenIdle } from "./when-idle.ts";
import { bookWords as words } from "./words/book.ts";
import { withWords } from "./words/with-words.ts";

const unitRoutes = withWords(["visit"], () => import("./screens/unit-routes.tsx"));
const visitRoutes = withWords(["visit"], () => import("./visit/visit-routes.tsx"));

const UnitRoutes = lazy(() => unitRoutes().then((module) => ({ default: module.UnitRoutes })));
const VisitRoutes = lazy(() => visitRoutes().then((module) => ({ default: module.VisitRoutes })));

const officeRoutes = withWords(["visit"], () => import("./screens/office-routes.tsx"));
const OfficeRoutes = lazy(() => officeRoutes().then((module) => ({ default: module.OfficeRoutes })));

/** Places whose screens come with `UnitRoutes`. */
const UNIT = /^\/(?:unit\/[^/]+(?:\/edit)?|(?:part|appliance|instrument|model)\/[^/]+|instruments|models)$/;

/** Places whose screens come with `OfficeRoutes`. */
const OFFICE =
  /^\/(?:day|month|van|scan|s|call|called|list|stickers|chain|point|site\/[^/]+\/owner|part\/[^/]+\/move|instrument\/[^/]+\/ledger|unit\/[^/]+\/(?:at|due|photos|plan|move|sticker|claim|kitchen|sensor))(?:\/|$)/;

const CountsScreen = lazy(withWords(["visit", "cause"], () => import("./screens/counts.tsx")));
const ScoreScreen = lazy(withWords(["visit", "cause"], () => import("./score/score.tsx")));
const tryScreen = withWords(["visit"], () => import("./try/try.tsx"));
const TryScreen = lazy(() => tryScreen().then((module) => ({ default: module.TryScreen })));
const kitchenDayScreen = withWords(["visit"], () => import("./kitchen-day/kitchen-day.tsx"));
const KitchenDayScreen = lazy(() =>
  kitchenDayScreen().then((module) => ({ default: module.KitchenDayScreen })),
);
const foundRoutes = withWords(["visit"], () => import("./found/routes.tsx"));
const FoundRoutes = lazy(() => foundRoutes().then((module) => ({ default: module.FoundRoutes })));
const WaterRoutes = lazy(() =>
  import("./water/routes.tsx").then((module) => ({ default: module.WaterRoutes })),
);

const PracticeScreen = lazy(withWords(["visit", "cause"], () => import("./practice/practice.tsx")));

/** Which book is open, and the ways to the other. */
function useBookName() {
  const [name, setName] = useState(bookName);
  const turnTo = (next: string) => {
    turnToBook(next);
    setName(next);
  };
  return { name, turnToDemo: () => turnTo(DEMO), turnToOwn: () => turnTo(OWN) };
}

export function App() {
  const { name, turnToDemo, turnToOwn } = useBookName();
  return (
    <BookProvider name={name} waiting={waitingFor(name)} prepare={prepareBook}>
      <Router hook={useHashLocation}>
        <Hand />
        {name === DEMO ? <DemoFilling /> : null}
        <WhereItWas key={name} />
        <StorageState />
        <NewVersion />
        <TimerWatch />
        <KeepFirstList />
        <NextScreens />
        {name === DEMO ? (
          <button type="button" className="band tint demo-bar" onClick={turnToOwn}>
            <strong>{words.demoBook}</strong> {words.backToOwn}
          </button>
        ) : null}
        <Suspense fallback={<p className="band">{words.opening}</p>}>
          <Switch>
            <Route path="/">
              <BookScreen onDemo={turnToDemo} isDemo={name === DEMO} />
            </Route>
            <Route path="/site/:id/water" component={WaterRoutes} />
            <Route path="/site/:id/water/in" component={WaterRoutes} />
            <Route path="/analysis/:id" component={WaterRoutes} />
            <Route path="/site/:id">{({ id }) => <SiteScreen id={id} key={id} />}</Route>
            <Route path="/unit/:id/try">{({ id }) => <TryScreen id={id} key={id} />}</Route>
            <Route path="/unit/:id/kitchen-day">{({ id }) => <KitchenDayScreen id={id} key={id} />}</Route>
            <Route path="/unit/:id/restrictor" component={FoundRoutes} />
            <Route path="/unit/:id/lines" component={FoundRoutes} />
            <Route path="/counts" component={CountsScreen} />
            <Route path="/score" component={ScoreScreen} />
            <Route path="/settings" component={SettingsScreen} />
            <Route path="/more">
              <MoreScreen onDemo={turnToDemo} onOwn={turnToOwn} isDemo={name === DEMO} />
            </Route>
            <Route path="/practice" component={PracticeScreen} />
            <Route path={UNIT}>
              <UnitRoutes />
            </Route>
            <Route path={OFFICE}>
              <OfficeRoutes />
            </Route>
            <Route>
              <VisitRoutes />
            </Route>
          </Switch>
        </Suspense>
      </Router>
    </BookProvider>
  );
}

const prepareBook = (live: LiveBook) => prepareLines(live.snapshot().book);

/** While the book is read its first screen is there as it was, unless the hands were in the middle of a visit. */
const waitingFor = (name: string) => (list: FirstList | undefined) => (
  <Router hook={useHashLocation}>
    <Switch>
      {list ? (
        <Route path="/">
          <BookAtOnce list={list} isDemo={name === DEMO} />
        </Route>
      ) : null}
      <Route>
        <p className="band">{words.opening}</p>
      </Route>
    </Switch>
  </Router>
);

/** The demo book fills itself the first time it is opened. */
function DemoFilling() {
  const { live } = useBook();
  useEffect(() => {
    if (live.snapshot().book.site.size > 0) return;
    void import("../../../examples/larkmoor.tapside.json?raw").then(({ default: text }) =>
      live.importText(text),
    );
  }, [live]);
  return null;
}

/** What the next press opens is fetched while the first screen is looked at. */
function NextScreens() {
  useEffect(() => whenIdle(() => void unitRoutes().then(visitRoutes)), []);
  return null;
}

/** The thumb zone is mirrored for the left hand. */
function Hand() {
  const { snapshot } = useBook();
  const left = snapshot.book.settings.get("settings")?.leftHand === true;
  useEffect(() => {
    document.documentElement.classList.toggle("left-hand", left);
  }, [left]);
  return null;
}
