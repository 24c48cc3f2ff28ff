import { Route, Switch } from "wouter";
import { ApplianceScreen } from "./appliance.tsx";
import { Gone } from "./gone.tsx";
import { InstrumentScreen, InstrumentsScreen } from "./instruments.tsx";
import { ModelScreen, ModelsScreen } from "./models.tsx";
import { PartScreen } from "./part.tsx";
import { UnitScreen } from "./unit.tsx";
import { UnitEditScreen } from "./unit-edit.tsx";

/** A unit with its judgement, and what it is set up from. Fetched once the first screen stands. */
export function UnitRoutes() {
  return (
    <Switch>
      <Route path="/unit/:id">{({ id }) => <UnitScreen id={id} key={id} />}</Route>
      <Route path="/unit/:id/edit">{({ id }) => <UnitEditScreen id={id} key={id} />}</Route>
      <Route path="/part/:id">{({ id }) => <PartScreen id={id} key={id} />}</Route>
      <Route path="/appliance/:id">{({ id }) => <ApplianceScreen id={id} key={id} />}</Route>
      <Route path="/instruments" component={InstrumentsScreen} />
      <Route path="/instrument/:id">{({ id }) => <InstrumentScreen id={id} key={id} />}</Route>
      <Route path="/models" component={ModelsScreen} />
      <Route path="/model/:id">{({ id }) => <ModelScreen id={id} key={id} />}</Route>
      <Route component={Gone} />
    </Switch>
  );
}
