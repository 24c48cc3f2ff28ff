import { Route, Switch } from "wouter";
import { AnalysisScreen } from "./analysis-screen.tsx";
import { ReportIn } from "./report-in.tsx";
import { WaterPage } from "./water-page.tsx";
import "./water.css";

/** Everything about a site's water. */
export function WaterRoutes() {
  return (
    <Switch>
      <Route path="/site/:id/water">{({ id }) => <WaterPage id={id} key={id} />}</Route>
      <Route path="/site/:id/water/in">{({ id }) => <ReportIn id={id} key={id} />}</Route>
      <Route path="/analysis/:id">{({ id }) => <AnalysisScreen id={id} key={id} />}</Route>
    </Switch>
  );
}
