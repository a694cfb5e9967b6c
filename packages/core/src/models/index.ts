/** Small plans with known answers: for tests, for teaching, for trying a chart. Each names its source. */
export { type AirVehicleAnswer, airVehicle } from "./airVehicle.ts";
export { allLinks } from "./allLinks.ts";
export { arrowsSeven } from "./arrowsSeven.ts";
export { constructionFourteen } from "./constructionFourteen.ts";
export { type CrewOfFourAnswer, crewOfFour } from "./crewOfFour.ts";
export { type DesignBuildTestAnswer, designBuildTest } from "./designBuildTest.ts";
export { type DiscreteFiveAnswer, discreteFive } from "./discreteFive.ts";
export { type GrahamNineAnswer, grahamNine } from "./grahamNine.ts";
export { type MergingRisksAnswer, mergingRisks } from "./mergingRisks.ts";
export { type OneRiskAnswer, oneRisk } from "./oneRisk.ts";
export { type ParallelNormalsAnswer, parallelNormals } from "./parallelNormals.ts";
export {
  type PlanWithRegisterAnswer,
  type PlanWithRegisterState,
  planWithRegister,
} from "./planWithRegister.ts";
export { productSix } from "./productSix.ts";
export { type RegisterOfFourAnswer, registerOfFour } from "./registerOfFour.ts";
export { type SharedCauseAnswer, sharedCause } from "./sharedCause.ts";
export type { KnownPercentile, NetworkAnswer, PlanData, SimulatedAnswer, TestModel } from "./testModel.ts";
export { threePathsNine } from "./threePathsNine.ts";
export type { ThreePointAnswer, ThreePointDurations } from "./threePoint.ts";
export { type TimeDependentCostAnswer, timeDependentCost } from "./timeDependentCost.ts";
export { type TimingAnomalyAnswer, timingAnomaly } from "./timingAnomaly.ts";
export { trainingFourteen } from "./trainingFourteen.ts";
export { trainingLinks } from "./trainingLinks.ts";
export { type TwoDriversAnswer, twoDrivers } from "./twoDrivers.ts";
export { type TwoNormals, type TwoNormalsAnswer, twoNormals } from "./twoNormals.ts";
export { vacuumTen } from "./vacuumTen.ts";
