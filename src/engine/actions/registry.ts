/** Every action, by id. A new action: its file, one line here, its words. */
import type { Action } from './action'
import { bondLine, unbondLine } from './aloft/bondLine'
import { bondLv, unbondLv } from './aloft/bondLv'
import { bondMetal, unbondMetal } from './aloft/bondMetal'
import { bridgeGap, unbridgeGap } from './aloft/bridgeGap'
import { brush } from './aloft/brush'
import { clamp, clampByHand } from './aloft/clamp'
import { dressLeads } from './aloft/dressLeads'
import { fitCover } from './aloft/fitCover'
import { fitGuard } from './aloft/fitGuard'
import { haul } from './aloft/haul'
import { closeJumper, openJumper } from './aloft/jumper'
import { lower } from './aloft/lower'
import { prove } from './aloft/prove'
import { removeCover } from './aloft/removeCover'
import { removeGuard } from './aloft/removeGuard'
import { retie, swapInsulator, untie } from './aloft/repair'
import { sayDead } from './aloft/sayDead'
import { test } from './aloft/test'
import { testPair } from './aloft/testPair'
import { tighten } from './aloft/tighten'
import { tug } from './aloft/tug'
import { unclamp, unclampByHand } from './aloft/unclamp'
import { comeBack, leaveSite, lookOverAgain } from './brief/absence'
import { answerLivening } from './brief/answerLivening'
import { checkCrew } from './brief/checkCrew'
import { chooseEarths } from './brief/chooseEarths'
import { holdBriefing } from './brief/holdBriefing'
import { inspectPole } from './brief/inspectPole'
import { locateServices } from './brief/locateServices'
import { markHazard } from './brief/markHazard'
import { matchPole } from './brief/matchPole'
import { parkTruck } from './brief/parkTruck'
import { readOrder } from './brief/readOrder'
import { readWeather } from './brief/readWeather'
import { sendAway } from './brief/sendAway'
import { setSigns } from './brief/setSigns'
import { signOn } from './brief/signOn'
import { stageRescue } from './brief/stageRescue'
import { writePlan } from './brief/writePlan'
import { askCrossingGuard } from './control/askCrossingGuard'
import { askFeederIn } from './control/askFeederIn'
import { askFeederOut } from './control/askFeederOut'
import { askJumpersIn, askJumpersOut } from './control/askJumpersOut'
import { askHowItStands } from './control/askHowItStands'
import { askRecloseBlock } from './control/askRecloseBlock'
import { askRecloseOn } from './control/askRecloseOn'
import { bagCarriers, putCarriersIn, takeCarriersOut, unbagCarriers } from './control/carriers'
import { checkHandleEarth } from './control/checkHandleEarth'
import { closeJob } from './control/closeJob'
import { clearIsolationEarth, earthIsolationPoint } from './control/isolationEarth'
import { lockSwitch } from './control/lockSwitch'
import { closeMain, openMain } from './control/mainSwitch'
import { motorSupplyOff, motorSupplyOn } from './control/motorSupply'
import { askOwner, searchPremises } from './control/owner'
import { hearPermit, returnPermit, takePermit } from './control/permit'
import { hearStep, receiveStep, reportStep } from './control/receiveStep'
import { setLocal, setRemote } from './control/remoteControl'
import { reportIsolated } from './control/reportIsolated'
import { showBoundary } from './control/showBoundary'
import { closeSwitch, openSwitch } from './control/switching'
import { tagSwitch, untag } from './control/tagSwitch'
import { testAtSwitch } from './control/testAtSwitch'
import { unlock } from './control/unlock'
import { writeTag } from './control/writeTag'
import { bookIn } from './gear/bookIn'
import { bookOut } from './gear/bookOut'
import { fetch } from './gear/fetch'
import { give } from './gear/give'
import { judge } from './gear/judge'
import { look } from './gear/look'
import { layPlatform, takeUpPlatform } from './gear/platform'
import { putDown } from './gear/putDown'
import { readLabel } from './gear/readLabel'
import { take } from './gear/take'
import { takeOff } from './gear/takeOff'
import { testItem } from './gear/testItem'
import { wear } from './gear/wear'
import { callClear } from './ground/callClear'
import { clampEarthEnd } from './ground/clampEarthEnd'
import { driveRod } from './ground/driveRod'
import { holdLead } from './ground/holdLead'
import { measureEarth } from './ground/measureEarth'
import { layLead } from './ground/layLead'
import { pullRod } from './ground/pullRod'
import { setBarrier } from './ground/setBarrier'
import { takeInBarrier } from './ground/takeInBarrier'
import { tieOn } from './ground/tieOn'
import { unclampEarthEnd } from './ground/unclampEarthEnd'
import { watch } from './ground/watch'
import { climb } from './moving/climb'
import { stepOffMat } from './moving/stepOffMat'
import { stepOnMat } from './moving/stepOnMat'
import { strapOn } from './moving/strapOn'
import { unstrap } from './moving/unstrap'
import { walk } from './moving/walk'
import { askSourceOff } from './response/askSourceOff'
import { bringDown } from './response/bringDown'
import { callControl } from './response/callControl'
import { firstAid } from './response/firstAid'
import { holdBack } from './response/holdBack'
import { judgeIndication } from './response/judgeIndication'
import { keepStill } from './response/keepStill'
import { bondTruck, unbondTruck } from './truck/bondTruck'
import { enterBucket, leaveBucket, moveBucket } from './truck/bucket'
import { stowBucket, tryLowerControls } from './truck/lowerControls'
import { liftOutriggers, setOutriggers } from './truck/outriggers'
import { startAgain } from './response/startAgain'
import { checkFromGround } from './work/checkFromGround'
import { handOverCharge, reportCharge, walkJob } from './work/handOver'
import { headCount } from './work/headCount'
import { measureToEarths } from './work/measureToEarths'
import { askWiderPermit, assessNextPole, declineNextPole } from './work/nextPole'
import { confirmComplete, declareSafe, stopJob } from './work/papers'
import { reportEarths } from './work/reportEarths'

const brief = [
  readOrder,
  chooseEarths,
  checkCrew,
  readWeather,
  markHazard,
  answerLivening,
  holdBriefing,
  signOn,
  writePlan,
]
const setUp = [parkTruck, setSigns, matchPole, inspectPole, stageRescue, locateServices]
const gear = [
  bookOut,
  bookIn,
  look,
  readLabel,
  testItem,
  judge,
  take,
  putDown,
  wear,
  takeOff,
  layPlatform,
  takeUpPlatform,
]
const moving = [walk, climb, strapOn, unstrap, stepOnMat, stepOffMat]
const talk = [
  hearStep,
  reportStep,
  hearPermit,
  askHowItStands,
  askFeederIn,
  askCrossingGuard,
  askJumpersOut,
  askJumpersIn,
]
const people = [give, fetch, sendAway, leaveSite, comeBack, lookOverAgain, startAgain, holdBack]
const atTheSwitch = [testAtSwitch, motorSupplyOff, motorSupplyOn, checkHandleEarth, writeTag]
const switching = [receiveStep, openSwitch, closeSwitch, lockSwitch, unlock, tagSwitch, untag, setLocal, setRemote]
const lowVoltage = [
  takeCarriersOut,
  putCarriersIn,
  bagCarriers,
  unbagCarriers,
  openMain,
  closeMain,
  askOwner,
  searchPremises,
  bondLv,
  unbondLv,
]
const isolationPoint = [earthIsolationPoint, clearIsolationEarth, reportIsolated]
const control = [askRecloseBlock, askRecloseOn, askFeederOut, takePermit, returnPermit, showBoundary, closeJob]
const ground = [
  setBarrier,
  takeInBarrier,
  driveRod,
  pullRod,
  clampEarthEnd,
  unclampEarthEnd,
  layLead,
  holdLead,
  callClear,
  tieOn,
  watch,
]
const handling = [haul, lower, prove, test, sayDead, judgeIndication, testPair, fitGuard, removeGuard, brush]
const earthing = [clamp, clampByHand, unclamp, unclampByHand, tighten, tug]
const bonding = [fitCover, removeCover, bondMetal, unbondMetal, bondLine, unbondLine, dressLeads]
const extension = [measureEarth, measureToEarths, assessNextPole, askWiderPermit, declineNextPole]
const shift = [walkJob, handOverCharge, reportCharge]
const truck = [setOutriggers, liftOutriggers, bondTruck, unbondTruck, tryLowerControls]
const bucket = [enterBucket, moveBucket, stowBucket, leaveBucket]
const gaps = [bridgeGap, unbridgeGap, openJumper, closeJumper]
const work = [
  untie,
  swapInsulator,
  retie,
  reportEarths,
  checkFromGround,
  declareSafe,
  confirmComplete,
  headCount,
  stopJob,
]
const response = [keepStill, callControl, askSourceOff, bringDown, firstAid]

const list: readonly Action[] = [
  ...brief,
  ...setUp,
  ...gear,
  ...moving,
  ...people,
  ...talk,
  ...atTheSwitch,
  ...switching,
  ...lowVoltage,
  ...isolationPoint,
  ...control,
  ...ground,
  ...handling,
  ...earthing,
  ...bonding,
  ...gaps,
  ...extension,
  ...shift,
  ...truck,
  ...bucket,
  ...work,
  ...response,
]

export const actions: ReadonlyMap<string, Action> = new Map(list.map((action) => [action.id, action]))
