import { Route, Switch } from "wouter";
import { LinesScreen } from "./lines.tsx";
import { RestrictorScreen } from "./restrictor.tsx";

/** What hangs there and how it is plumbed. Fetched when it is asked for. */
export function FoundRoutes() {
  return (
    <Switch>
      <Route path="/unit/:id/restrictor">{({ id }) => <RestrictorScreen id={id} key={id} />}</Route>
      <Route path="/unit/:id/lines">{({ id }) => <LinesScreen id={id} key={id} />}</Route>
    </Switch>
  );
}
