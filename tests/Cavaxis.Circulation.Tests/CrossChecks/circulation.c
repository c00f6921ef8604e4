/*
 * The equations of docs/models/circulation.md a second time, solved by CVODE (multistep methods of variable order) instead of the
 * Runge-Kutta pair of the program. Every transport of gas is an edge of a graph between mixed volumes here; each edge is
 * taken from one and given to the other, for three carried substances at once.
 *
 * circulation INPUT METHOD RTOL [REPEATS]
 *   INPUT   lines name=value; drainage=, return= and state= hold rows of numbers; beats= how many beats to run; mass= mass ratio
 *   METHOD  bdf or adams
 * Prints one line "seconds steps evaluations roots" (processor time of the quickest integration), then the state, one number a line.
 */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sundials/sundials_types.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>
#include <time.h>

#define PARAMETERS \
    X(HeartRatePerMin) \
    X(BreathsPerMin) \
    X(InspirationShare) \
    X(AtrialContractionS) \
    X(AtrioventricularDelayS) \
    X(VentricularRiseS) \
    X(VentricularFallS) \
    X(LeftVentricleElastanceMmHgPerMl) \
    X(LeftVentricleZeroVolumeMl) \
    X(LeftVentricleStiffnessMmHg) \
    X(LeftVentricleStiffnessPerMl) \
    X(RightVentricleElastanceMmHgPerMl) \
    X(RightVentricleZeroVolumeMl) \
    X(RightVentricleStiffnessMmHg) \
    X(RightVentricleStiffnessPerMl) \
    X(LeftAtriumElastanceMmHgPerMl) \
    X(LeftAtriumSystolicElastanceMmHgPerMl) \
    X(LeftAtriumZeroVolumeMl) \
    X(RightAtriumElastanceMmHgPerMl) \
    X(RightAtriumSystolicElastanceMmHgPerMl) \
    X(RightAtriumZeroVolumeMl) \
    X(SeptumLeftToRight) \
    X(SeptumRightToLeft) \
    X(PericardiumScaleMmHg) \
    X(PericardiumVolumeMl) \
    X(PericardiumWidthMl) \
    X(TricuspidAreaCm2) \
    X(PulmonaryValveAreaCm2) \
    X(MitralAreaCm2) \
    X(AorticValveAreaCm2) \
    X(ValveResistanceMmHgSPerMl) \
    X(InflowInertanceMmHgS2PerMl) \
    X(OutflowInertanceMmHgS2PerMl) \
    X(AorticLeakAreaCm2) \
    X(MitralLeakAreaCm2) \
    X(AscendingComplianceMlPerMmHg) \
    X(ArchComplianceMlPerMmHg) \
    X(DescendingComplianceMlPerMmHg) \
    X(AscendingZeroVolumeMl) \
    X(ArchZeroVolumeMl) \
    X(DescendingZeroVolumeMl) \
    X(ArchInertanceMmHgS2PerMl) \
    X(DescendingInertanceMmHgS2PerMl) \
    X(AorticResistanceMmHgSPerMl) \
    X(SystemicResistanceMmHgSPerMl) \
    X(CoronaryShare) \
    X(UpperShare) \
    X(SplanchnicShare) \
    X(AscendingPartOfUpper) \
    X(UpperVenousComplianceMlPerMmHg) \
    X(SplanchnicComplianceMlPerMmHg) \
    X(LowerVenousComplianceMlPerMmHg) \
    X(UpperVenousZeroVolumeMl) \
    X(SplanchnicZeroVolumeMl) \
    X(LowerVenousZeroVolumeMl) \
    X(UpperVenousResistanceMmHgSPerMl) \
    X(SplanchnicVenousResistanceMmHgSPerMl) \
    X(LowerVenousResistanceMmHgSPerMl) \
    X(SuperiorCavaZeroVolumeMl) \
    X(ThoracicCavaZeroVolumeMl) \
    X(AbdominalCavaZeroVolumeMl) \
    X(CavalStiffnessMmHg) \
    X(SuperiorCavaResistanceMmHgSPerMl) \
    X(ThoracicCavaResistanceMmHgSPerMl) \
    X(AbdominalCavaResistanceMmHgSPerMl) \
    X(AzygosShare) \
    X(RenalShareOfLower) \
    X(PulmonaryArteryComplianceMlPerMmHg) \
    X(PulmonaryArteryZeroVolumeMl) \
    X(PulmonaryResistanceMmHgSPerMl) \
    X(PulmonaryVenousComplianceMlPerMmHg) \
    X(PulmonaryVenousZeroVolumeMl) \
    X(PulmonaryVenousResistanceMmHgSPerMl) \
    X(AlveolarVesselShare) \
    X(PleuralPressureMmHg) \
    X(PleuralSwingMmHg) \
    X(PeepCmH2O) \
    X(AlveolarSwingCmH2O) \
    X(PleuralTransmission) \
    X(AbdominalPressureMmHg) \
    X(AbdominalSwingMmHg) \
    X(HaemoglobinGPerDl) \
    X(VirtualPo2Factor) \
    X(OxygenConsumptionMlPerMin) \
    X(HeartOxygenShare) \
    X(UpperOxygenShare) \
    X(SplanchnicOxygenShare) \
    X(CriticalOxygenMlPerMl) \
    X(CarbonDioxideProductionMlPerMin) \
    X(CarbonDioxideScale) \
    X(CarbonDioxideExponent) \
    X(HaldaneFactor) \
    X(TissueCarbonDioxideMl) \
    X(InspiredOxygenFraction) \
    X(AlveolarVentilationLPerMin) \
    X(ShuntFraction) \
    X(LungGasVolumeMl) \
    X(CircuitOn) \
    X(TargetFlowLPerMin) \
    X(FlowControlPerS) \
    X(PumpSpeedRatio) \
    X(HighestSpeedRatio) \
    X(PumpShutOffMmHg) \
    X(PumpLinearMmHgPerLPerMin) \
    X(PumpQuadraticMmHgPerLPerMin2) \
    X(DrainageLinearMmHgPerLPerMin) \
    X(DrainageQuadraticMmHgPerLPerMin2) \
    X(ReturnLinearMmHgPerLPerMin) \
    X(ReturnQuadraticMmHgPerLPerMin2) \
    X(CircuitInertanceMmHgS2PerMl) \
    X(SuctionResistanceMmHgSPerMl) \
    X(ArterialShareOfReturn) \
    X(AscendingShareOfArterialReturn) \
    X(DrainageLineMl) \
    X(MembraneLungMl) \
    X(ReturnLineMl) \
    X(MembraneRatedFlowLPerMin) \
    X(SweepOxygenFraction) \
    X(SweepLPerMin) \
    X(MembraneCarbonDioxideMlPerMinPerMmHg) \
    X(CavalMixingMlPerS) \
    X(AtrialMixingMlPerS) \
    X(JetMixing) \
    X(BalloonVolumeMl) \
    X(VentFlowLPerMin) \
    X(TransvalvularFlowLPerMin) \
    X(SeptalOpeningCm2) \
    X(ReflexGain) \
    X(ReflexPressureMmHg) \
    X(BloodVolumeMl)

#define CELLS 10
#define NODES 25
#define SIZE 96
#define VALVES 4
#define ONEWAY 5

/* State: 15 volumes, 7 inertial flows, pump speed, 5 reflex quantities, oxygen, carbon dioxide, marked blood, alveolar gas, totals. */
enum { vRA, vRV, vPA, vPV, vLA, vLV, vAsc, vArch, vDesc, vUp, vSpl, vLow, vSvc, vTc, vAc, qTri };
enum { qArch = 19, qDesc, qPump, speed, sensed, rRate, rRes, rEla, rVol, gO2, gCo2 = gO2 + NODES, gMark = gCo2 + NODES };
enum { alvO2 = gMark + CELLS, alvCo2, sumO2Lung, sumO2Membrane, sumO2Used, sumCo2Lung, sumCo2Membrane, sumCo2Made };
enum { nRV = 10, nPA, nPV, nLA, nLV, nAsc, nArch, nDesc, nUp, nSpl, nLow, nCor, nDrain, nMem, nBack };

typedef struct {
#define X(n) double n;
    PARAMETERS
#undef X
    double drainage[CELLS], venous[CELLS];
    double mass;
    double beat0, beatLength, breath0;
    double marks[6]; /* end of atrial systole, start, peak and end of ventricular activation; end of inspiration and expiration */
    int open[ONEWAY];
    double opening[ONEWAY];
    long evaluations;
} Patient;

static const char *names[] = {
#define X(n) #n,
    PARAMETERS
#undef X
};

static const double cellShare[CELLS] = {0.5, 0.5, 0.25, 0.35, 0.2, 0.2, 1, 0.35, 0.35, 0.3};
static const int cellVolume[CELLS] = {vSvc, vSvc, vRA, vRA, vRA, vRA, vTc, vAc, vAc, vAc};
static const int nodeVolume[] = {vRV, vPA, vPV, vLA, vLV, vAsc, vArch, vDesc, vUp, vSpl, vLow};
static const double mmHgPerCm = 0.73555912, dry = 713, btps = 863;

static double positive(double x) { return x > 0 ? x : 0; }
static double unit(double x) { return x < 0 ? 0 : x > 1 ? 1 : x; }
static double least(double a, double b) { return a < b ? a : b; }
static double most(double a, double b) { return a > b ? a : b; }
static double swing(double x) { return 0.5 * (1 - cos(M_PI * x)); }
static double ease(double x) { return x * x * (3 - 2 * x); }
static double orifice(void) { return 1060.0 / 2 / 133.322387415 * 1e-4; }

/* Head of a vein over a cava, both counted above the pressure at which the mouth of the vein falls shut, corner of 1 mmHg. */
static double inlet(double vein, double cava, double shut)
{
    double a = vein - shut, b = cava - shut;
    return 0.5 * (a - b + sqrt(a * a + 1) - sqrt(b * b + 1));
}

static double leak(double dp, double area) { return area * dp / sqrt(orifice() * (fabs(dp) + 1)); }

static double tube(const Patient *p, double filling)
{
    double v = most(filling, 0.02);
    return p->CavalStiffnessMmHg * (v * v - pow(v, -1.5));
}

static double openness(double filling)
{
    double s = filling * filling;
    return least(1, 1.15 * s / (s + 0.15));
}

static double oxygenContent(const Patient *p, double po2)
{
    double x = po2 * p->VirtualPo2Factor;
    double z = (x * x - 1600) / (x * x + 1600);
    static const double series[] = {-1.2321, -1.2602, 0.464, 0.5301, -0.002, -0.0173};
    double sum = 0;
    for (int i = 0; i < 6; i++) {
        sum = sum * z + series[i];
    }
    double odds = (x * x * x + 150 * x) / 23400 * exp(sum);
    return 0.0134 * p->HaemoglobinGPerDl * odds / (1 + odds) + 0.000031 * po2;
}

static double haldane(const Patient *p, double oxygen)
{
    return 1 + p->HaldaneFactor * positive(1 - oxygen / (0.0134 * p->HaemoglobinGPerDl));
}

static double carbonDioxideContent(const Patient *p, double pco2, double oxygen)
{
    return p->CarbonDioxideScale * pow(most(pco2, 0.1), p->CarbonDioxideExponent) * haldane(p, oxygen);
}

static double carbonDioxideTension(const Patient *p, double content, double oxygen)
{
    return pow(most(content, 1e-4) / (p->CarbonDioxideScale * haldane(p, oxygen)), 1 / p->CarbonDioxideExponent);
}

typedef struct {
    double ventricles, atria, chest, balloon;
} Activity;

static Activity activity(const Patient *p, double t)
{
    double b = t - p->beat0, r = t - p->breath0;
    const double *m = p->marks;
    double relax = unit((b - m[2]) / (m[3] - m[2]));
    return (Activity){
        swing(unit((b - m[1]) / (m[2] - m[1])) + relax),
        swing(2 * unit(b / m[0])),
        swing(unit(r / m[4]) + unit((r - m[4]) / (m[5] - m[4]))),
        1 - ease(unit(b / m[1])) + ease(relax),
    };
}

static double ventricle(double active, double stretch, double elastance, double scale, double exponent)
{
    return active * elastance * stretch + (1 - active) * scale * (exp(least(6, exponent * stretch)) - 1);
}

/* What an atrium emptied below its zero volume pulls with, as its walls come together. */
static double flat(const Patient *p, double share)
{
    double v = share < 0.02 ? 0.02 : least(1, share);
    return p->CavalStiffnessMmHg * (pow(v, -1.5) + 1.5 * v - 2.5);
}

/* Pressures of the chambers and great vessels; with them what presses the four valves open. */
static void chambers(Patient *p, Activity a, const double *y, double *pressure, double pleura)
{
    double heart = y[vRA] + y[vRV] + y[vLA] + y[vLV];
    double sac = pleura + p->PericardiumScaleMmHg * exp(least(5, (heart - p->PericardiumVolumeMl) / p->PericardiumWidthMl));
    double drive = 1 + 0.35 * y[rEla];
    double left = ventricle(a.ventricles, y[vLV] - p->LeftVentricleZeroVolumeMl, drive * p->LeftVentricleElastanceMmHgPerMl,
        p->LeftVentricleStiffnessMmHg, p->LeftVentricleStiffnessPerMl);
    double right = ventricle(a.ventricles, y[vRV] - p->RightVentricleZeroVolumeMl, drive * p->RightVentricleElastanceMmHgPerMl,
        p->RightVentricleStiffnessMmHg, p->RightVentricleStiffnessPerMl);
    pressure[vLV] = sac + left + p->SeptumRightToLeft * right;
    pressure[vRV] = sac + right + p->SeptumLeftToRight * left;
    pressure[vLA] = sac - flat(p, y[vLA] / p->LeftAtriumZeroVolumeMl) + (y[vLA] - p->LeftAtriumZeroVolumeMl)
        * ((1 - a.atria) * p->LeftAtriumElastanceMmHgPerMl + a.atria * p->LeftAtriumSystolicElastanceMmHgPerMl);
    pressure[vRA] = sac - flat(p, y[vRA] / p->RightAtriumZeroVolumeMl) + (y[vRA] - p->RightAtriumZeroVolumeMl)
        * ((1 - a.atria) * p->RightAtriumElastanceMmHgPerMl + a.atria * p->RightAtriumSystolicElastanceMmHgPerMl);
    pressure[vPA] = pleura + (y[vPA] - p->PulmonaryArteryZeroVolumeMl) / p->PulmonaryArteryComplianceMlPerMmHg;
    pressure[vAsc] = pleura + (y[vAsc] - p->AscendingZeroVolumeMl) / p->AscendingComplianceMlPerMmHg;
    p->opening[0] = pressure[vRA] - pressure[vRV];
    p->opening[1] = pressure[vRV] - pressure[vPA];
    p->opening[2] = pressure[vLA] - pressure[vLV];
    p->opening[3] = pressure[vLV] - pressure[vAsc];
}

typedef struct {
    double c[NODES][3], d[NODES][3];
} Carried;

/* Flow from a to b carries the concentration of its source; exchange moves blood both ways. */
static void edge(Carried *g, int a, int b, double flow, double exchange)
{
    for (int s = 0; s < 3; s++) {
        double moved = flow * (flow >= 0 ? g->c[a][s] : g->c[b][s]) + exchange * (g->c[a][s] - g->c[b][s]);
        g->d[a][s] -= moved;
        g->d[b][s] += moved;
    }
}

static void derive(Patient *p, double t, const double *y, double *dy)
{
    p->evaluations++;
    double P[15], dV[15] = {0};
    Activity a = activity(p, t);
    double peep = p->PeepCmH2O * mmHgPerCm;
    double pleura = p->PleuralPressureMmHg + p->PleuralTransmission * peep + p->PleuralSwingMmHg * a.chest;
    double belly = p->AbdominalPressureMmHg + p->AbdominalSwingMmHg * a.chest;
    double alveoli = peep + p->AlveolarSwingCmH2O * mmHgPerCm * a.chest;
    chambers(p, a, y, P, pleura);
    double zeroShare = 1 - 0.12 * y[rVol];
    double svc = y[vSvc] / p->SuperiorCavaZeroVolumeMl, tc = y[vTc] / p->ThoracicCavaZeroVolumeMl, ac = y[vAc] / p->AbdominalCavaZeroVolumeMl;
    P[vPV] = pleura + (y[vPV] - p->PulmonaryVenousZeroVolumeMl) / p->PulmonaryVenousComplianceMlPerMmHg;
    P[vArch] = pleura + (y[vArch] - p->ArchZeroVolumeMl) / p->ArchComplianceMlPerMmHg;
    P[vDesc] = (y[vDesc] + p->BalloonVolumeMl * a.balloon - p->DescendingZeroVolumeMl) / p->DescendingComplianceMlPerMmHg;
    P[vUp] = (y[vUp] - p->UpperVenousZeroVolumeMl) / p->UpperVenousComplianceMlPerMmHg;
    P[vSpl] = belly + (y[vSpl] - zeroShare * p->SplanchnicZeroVolumeMl) / p->SplanchnicComplianceMlPerMmHg;
    P[vLow] = (y[vLow] - zeroShare * p->LowerVenousZeroVolumeMl) / p->LowerVenousComplianceMlPerMmHg;
    P[vSvc] = pleura + tube(p, svc);
    P[vTc] = pleura + tube(p, tc);
    P[vAc] = belly + tube(p, ac);

    double G = 1 / (p->SystemicResistanceMmHgSPerMl * (1 + 0.4 * y[rRes]));
    double coronary = G * p->CoronaryShare * (P[vAsc] - P[vRA]);
    double armRight = G * p->UpperShare * p->AscendingPartOfUpper * (P[vAsc] - P[vUp]);
    double armLeft = G * p->UpperShare * (1 - p->AscendingPartOfUpper) * (P[vArch] - P[vUp]);
    double gut = G * p->SplanchnicShare * (P[vDesc] - P[vSpl]);
    double legs = G * (1 - p->CoronaryShare - p->UpperShare - p->SplanchnicShare) * (P[vDesc] - P[vLow]);
    double upper = inlet(P[vUp], P[vSvc], 0) / p->UpperVenousResistanceMmHgSPerMl;
    double hepatic = inlet(P[vSpl], P[vAc], belly) / p->SplanchnicVenousResistanceMmHgSPerMl;
    double lower = inlet(P[vLow], P[vAc], belly) / p->LowerVenousResistanceMmHgSPerMl;
    double fromSvc = svc * svc * (P[vSvc] - P[vRA]) / p->SuperiorCavaResistanceMmHgSPerMl;
    double fromTc = tc * tc * (P[vTc] - P[vRA]) / p->ThoracicCavaResistanceMmHgSPerMl;
    double diaphragm = ac * ac * (P[vAc] - P[vTc]) / p->AbdominalCavaResistanceMmHgSPerMl;
    double zone = P[vPV] - p->AlveolarVesselShare * alveoli;
    double behind = p->AlveolarVesselShare * alveoli + 0.5 * (zone + sqrt(zone * zone + 1));
    double lung = positive((P[vPA] - behind) / p->PulmonaryResistanceMmHgSPerMl);
    double pulmonaryVein = (P[vPV] - P[vLA]) / p->PulmonaryVenousResistanceMmHgSPerMl;
    double aorticLeak = leak(positive(-p->opening[3]), p->AorticLeakAreaCm2);
    double mitralLeak = leak(positive(-p->opening[2]), p->MitralLeakAreaCm2);
    double septal = leak(P[vLA] - P[vRA], p->SeptalOpeningCm2);
    double full = y[vLV] * y[vLV], halfFull = 2 * p->LeftVentricleZeroVolumeMl * p->LeftVentricleZeroVolumeMl;
    double transvalvular = p->TransvalvularFlowLPerMin / 0.06 * full / (full + halfFull);

    /* Circuit. */
    double q = y[qPump], L = 0.06 * q, n = y[speed];
    static const int siteOf[CELLS] = {0, 0, 1, 1, 1, 1, 2, 3, 3, 3};
    static const int siteVolume[4] = {vSvc, vRA, vTc, vAc};
    double free[4] = {openness(svc), openness(y[vRA] / p->RightAtriumZeroVolumeMl), openness(tc), openness(ac)};
    double weight[CELLS], openSum = 0, source = 0, sink = 0;
    for (int i = 0; i < CELLS; i++) {
        weight[i] = p->drainage[i] * free[siteOf[i]];
        openSum += weight[i];
        source += weight[i] * P[siteVolume[siteOf[i]]];
        sink += p->venous[i] * P[siteVolume[siteOf[i]]];
    }
    double o = most(openSum, 1e-4);
    source /= o;
    double vent = least(positive(q), p->VentFlowLPerMin / 0.06 * full / (full + halfFull));
    double A = p->ArterialShareOfReturn, B = p->AscendingShareOfArterialReturn;
    sink = (1 - A) * sink + A * (B * P[vAsc] + (1 - B) * P[vDesc]);
    double head = p->PumpShutOffMmHg * n * n + p->PumpLinearMmHgPerLPerMin * n * L + p->PumpQuadraticMmHgPerLPerMin2 * L * fabs(L);
    double drop = L * (p->DrainageLinearMmHgPerLPerMin + p->ReturnLinearMmHgPerLPerMin)
        + L * fabs(L) * (p->DrainageQuadraticMmHgPerLPerMin2 + p->ReturnQuadraticMmHgPerLPerMin2)
        + p->SuctionResistanceMmHgSPerMl * (1 / o - 1) * q;
    double on = p->CircuitOn;
    p->opening[4] = on * (source + head - drop - sink) - 1000 * (1 - on);
    dy[qPump] = p->open[4] ? p->opening[4] / p->CircuitInertanceMmHgS2PerMl : 0;
    double trim = p->FlowControlPerS * (1 - L / p->TargetFlowLPerMin);
    dy[speed] = on * (trim < 0 ? trim : trim * least(1, 10 * positive(1 - n / p->HighestSpeedRatio)));
    double out[CELLS], in[CELLS];
    for (int i = 0; i < CELLS; i++) {
        out[i] = (q - vent) * weight[i] / o;
        in[i] = q * (1 - A) * p->venous[i];
        dV[siteVolume[siteOf[i]]] += in[i] - out[i];
    }

    /* Blood. */
    double tri = y[qTri], pul = y[qTri + 1], mit = y[qTri + 2], aor = y[qTri + 3];
#define MOVE(from, to, f) (dV[from] -= (f), dV[to] += (f))
    MOVE(vRA, vRV, tri);
    MOVE(vRV, vPA, pul);
    MOVE(vPA, vPV, lung);
    MOVE(vPV, vLA, pulmonaryVein);
    MOVE(vLA, vLV, mit - mitralLeak);
    MOVE(vLV, vAsc, aor - aorticLeak + transvalvular);
    MOVE(vLA, vRA, septal);
    MOVE(vAsc, vArch, y[qArch]);
    MOVE(vArch, vDesc, y[qDesc]);
    MOVE(vAsc, vRA, coronary);
    MOVE(vAsc, vUp, armRight);
    MOVE(vArch, vUp, armLeft);
    MOVE(vDesc, vSpl, gut);
    MOVE(vDesc, vLow, legs);
    MOVE(vUp, vSvc, upper);
    MOVE(vSpl, vAc, hepatic);
    MOVE(vLow, vAc, lower);
    MOVE(vAc, vTc, diaphragm);
    MOVE(vTc, vRA, fromTc);
    MOVE(vSvc, vRA, fromSvc);
#undef MOVE
    dV[vLV] -= vent;
    dV[vAsc] += q * A * B;
    dV[vDesc] += q * A * (1 - B);
    memcpy(dy, dV, sizeof dV);
    const double area[VALVES] = {p->TricuspidAreaCm2, p->PulmonaryValveAreaCm2, p->MitralAreaCm2, p->AorticValveAreaCm2};
    for (int i = 0; i < VALVES; i++) {
        double f = y[qTri + i];
        double mass = i % 2 == 0 ? p->InflowInertanceMmHgS2PerMl : p->OutflowInertanceMmHgS2PerMl;
        double resist = p->ValveResistanceMmHgSPerMl * f + orifice() / (area[i] * area[i]) * f * fabs(f);
        dy[qTri + i] = p->open[i] ? (p->opening[i] - resist) / mass : 0;
    }
    dy[qArch] = (P[vAsc] - P[vArch] - p->AorticResistanceMmHgSPerMl * y[qArch]) / p->ArchInertanceMmHgS2PerMl;
    dy[qDesc] = (P[vArch] - P[vDesc] - p->AorticResistanceMmHgSPerMl * y[qDesc]) / p->DescendingInertanceMmHgS2PerMl;
    double want = (p->ReflexPressureMmHg - y[sensed]) / 25;
    double nerve = p->ReflexGain * want / sqrt(1 + want * want);
    dy[sensed] = (P[vArch] - y[sensed]) / 2;
    dy[rRate] = (nerve - y[rRate]) / 2;
    dy[rRes] = (nerve - y[rRes]) / 6;
    dy[rEla] = (nerve - y[rEla]) / 8;
    dy[rVol] = (nerve - y[rVol]) / 20;

    /* Gas: oxygen, carbon dioxide and the mark of returned blood on one graph. */
    Carried g;
    memset(&g, 0, sizeof g);
    double rest = 1 - p->HeartOxygenShare - p->UpperOxygenShare - p->SplanchnicOxygenShare;
    const double use[4] = {p->HeartOxygenShare, p->UpperOxygenShare, p->SplanchnicOxygenShare, rest};
    static const int tissue[4] = {nCor, nUp, nSpl, nLow};
    for (int i = 0; i < NODES; i++) {
        double blood = i < CELLS ? cellShare[i] * y[cellVolume[i]]
            : i <= nLow          ? y[nodeVolume[i - nRV]]
            : i == nCor          ? 0.008 * p->BloodVolumeMl
            : i == nDrain        ? p->DrainageLineMl
            : i == nMem          ? p->MembraneLungMl
                                 : p->ReturnLineMl;
        double store = 0;
        for (int k = 0; k < 4; k++) {
            store += tissue[k] == i ? use[k] * p->TissueCarbonDioxideMl : 0;
        }
        blood = most(blood, 1e-3);
        g.c[i][0] = y[gO2 + i] / blood;
        g.c[i][1] = y[gCo2 + i] / (blood + store);
        g.c[i][2] = i < CELLS ? y[gMark + i] / blood : i == nBack ? 1 : 0;
    }
    double azygos = p->AzygosShare * upper, renal = p->RenalShareOfLower * lower, iliac = lower - renal;
    double eddy = p->CavalMixingMlPerS, stir = p->AtrialMixingMlPerS;
#define STIRRED(a, b) (p->JetMixing * positive(in[a] + in[b]))
    double j0 = upper - azygos + in[0] - out[0] - cellShare[0] * dV[vSvc];
    double j4 = fromTc + coronary + in[5] - out[5] - cellShare[5] * dV[vRA];
    double j8 = iliac + in[9] - out[9] - cellShare[9] * dV[vAc];
    edge(&g, 0, 1, j0, eddy + STIRRED(0, 1));
    edge(&g, 1, 2, fromSvc, eddy + 0.25 * stir + STIRRED(1, 2));
    edge(&g, 2, 3, fromSvc + in[2] - out[2] - cellShare[2] * dV[vRA], stir + STIRRED(2, 3));
    edge(&g, 3, 4, tri + out[4] - in[4] + cellShare[4] * dV[vRA], stir + STIRRED(3, 4));
    edge(&g, 5, 3, j4, stir + STIRRED(5, 3));
    edge(&g, 6, 5, fromTc, eddy + 0.25 * stir + STIRRED(6, 5));
    edge(&g, 7, 6, diaphragm, eddy + STIRRED(7, 6));
    edge(&g, 8, 7, j8 + renal + in[8] - out[8] - cellShare[8] * dV[vAc], eddy + STIRRED(8, 7));
    edge(&g, 9, 8, j8, eddy + STIRRED(9, 8));
#undef STIRRED
    edge(&g, nUp, 0, upper - azygos, 0);
    edge(&g, nUp, 1, azygos, 0);
    edge(&g, nSpl, 7, hepatic, 0);
    edge(&g, nLow, 8, renal, 0);
    edge(&g, nLow, 9, iliac, 0);
    edge(&g, nLA, 3, septal, 0);
    edge(&g, nAsc, nCor, coronary, 0);
    edge(&g, nCor, 5, coronary, 0);
    edge(&g, 4, nRV, tri, 0);
    edge(&g, nRV, nPA, pul, 0);
    edge(&g, nPA, nPV, lung, 0);
    edge(&g, nPV, nLA, pulmonaryVein, 0);
    edge(&g, nLA, nLV, mit, 0);
    edge(&g, nLV, nLA, mitralLeak, 0);
    edge(&g, nLV, nAsc, aor + transvalvular, 0);
    edge(&g, nAsc, nLV, aorticLeak, 0);
    edge(&g, nLV, nDrain, vent, 0);
    edge(&g, nAsc, nArch, y[qArch], 0);
    edge(&g, nArch, nDesc, y[qDesc], 0);
    edge(&g, nAsc, nUp, armRight, 0);
    edge(&g, nArch, nUp, armLeft, 0);
    edge(&g, nDesc, nSpl, gut, 0);
    edge(&g, nDesc, nLow, legs, 0);
    for (int i = 0; i < CELLS; i++) {
        edge(&g, i, nDrain, out[i], 0);
        edge(&g, nBack, i, in[i], 0);
    }
    edge(&g, nDrain, nMem, q, 0);
    edge(&g, nMem, nBack, q, 0);
    edge(&g, nBack, nAsc, q * A * B, 0);
    edge(&g, nBack, nDesc, q * A * (1 - B), 0);

    /* Lungs. */
    double po2 = y[alvO2] * btps / p->LungGasVolumeMl, pco2 = y[alvCo2] * btps / p->LungGasVolumeMl;
    double breathe = p->AlveolarVentilationLPerMin * 1000 / 60 / btps, exposed = lung * (1 - p->ShuntFraction);
    double end = oxygenContent(p, po2);
    double uptake = exposed * (end - g.c[nPA][0]);
    double output = exposed * (g.c[nPA][1] - carbonDioxideContent(p, pco2, end));
    g.d[nPV][0] += uptake;
    g.d[nPV][1] -= output;
    dy[sumO2Lung] = breathe * (dry * p->InspiredOxygenFraction - po2);
    dy[sumCo2Lung] = breathe * pco2;
    dy[alvO2] = dy[sumO2Lung] - uptake;
    dy[alvCo2] = output - dy[sumCo2Lung];

    /* Tissues. */
    dy[sumO2Used] = 0;
    dy[sumCo2Made] = p->CarbonDioxideProductionMlPerMin / 60;
    for (int k = 0; k < 4; k++) {
        double ratio = p->CriticalOxygenMlPerMl / g.c[tissue[k]][0];
        double used = use[k] * p->OxygenConsumptionMlPerMin / 60 / (1 + ratio * ratio);
        g.d[tissue[k]][0] -= used;
        g.d[tissue[k]][1] += use[k] * dy[sumCo2Made];
        dy[sumO2Used] += used;
    }

    /* Membrane lung. */
    double Q = positive(q), gas = dry * p->SweepOxygenFraction, inlet = g.c[nDrain][0];
    double units = log(5) * (gas - 40) / (dry - 40) * 12 / p->HaemoglobinGPerDl
        * pow(p->MembraneRatedFlowLPerMin / most(0.06 * Q, 0.02), 2.0 / 3);
    double given = Q * (oxygenContent(p, gas) - inlet) * (1 - exp(-units));
    double tension = carbonDioxideTension(p, g.c[nDrain][1], inlet);
    double sweep = p->SweepLPerMin * 1000 / 60 * 273.15 / 293.15, conduct = p->MembraneCarbonDioxideMlPerMinPerMmHg / 60;
    double series = sweep * conduct / (sweep + conduct * dry);
    double held = most(Q, 0.3) * p->CarbonDioxideExponent * g.c[nDrain][1] / tension;
    double taken = on * held * tension * (1 - exp(-series / held)) * Q / (Q + 0.5);
    g.d[nMem][0] += given;
    g.d[nMem][1] -= taken;
    dy[sumO2Membrane] = given;
    dy[sumCo2Membrane] = taken;
    for (int i = 0; i < NODES; i++) {
        dy[gO2 + i] = g.d[i][0];
        dy[gCo2 + i] = g.d[i][1];
        if (i < CELLS) {
            dy[gMark + i] = g.d[i][2];
        }
    }
}

static int rhs(realtype t, N_Vector y, N_Vector dy, void *user)
{
    derive(user, t, N_VGetArrayPointer(y), N_VGetArrayPointer(dy));
    return 0;
}

static int flowOf(int i) { return i < VALVES ? qTri + i : qPump; }

static int roots(realtype t, N_Vector v, realtype *g, void *user)
{
    Patient *p = user;
    double *y = N_VGetArrayPointer(v);
    if (p->open[4]) {
        Activity a = activity(p, t);
        double P[15];
        chambers(p, a, y, P, p->PleuralPressureMmHg + p->PleuralTransmission * p->PeepCmH2O * mmHgPerCm + p->PleuralSwingMmHg * a.chest);
    } else {
        double scratch[SIZE];
        derive(p, t, y, scratch);
    }
    for (int i = 0; i < ONEWAY; i++) {
        g[i] = p->open[i] ? y[flowOf(i)] : p->opening[i];
    }
    return 0;
}

static void beginBeat(Patient *p, double t, const double *y)
{
    double length = 60 / (p->HeartRatePerMin * (1 + 0.35 * y[rRate]));
    double marks = p->AtrioventricularDelayS + p->VentricularRiseS + p->VentricularFallS;
    double scale = least(sqrt(length), 0.92 * length / marks);
    p->beat0 = t;
    p->beatLength = length;
    p->marks[0] = scale * p->AtrialContractionS;
    p->marks[1] = scale * p->AtrioventricularDelayS;
    p->marks[2] = p->marks[1] + scale * p->VentricularRiseS;
    p->marks[3] = p->marks[2] + scale * p->VentricularFallS;
}

static double beatsPerBreath(const Patient *p) { return most(1, rint(p->HeartRatePerMin / p->BreathsPerMin)); }

static void beginBreath(Patient *p, double t)
{
    double length = beatsPerBreath(p) * p->beatLength;
    p->breath0 = t;
    p->marks[4] = p->InspirationShare * length;
    p->marks[5] = least(length, 2.2 * p->marks[4]);
}

static double nextMark(const Patient *p, double t)
{
    double next = p->beat0 + p->beatLength;
    for (int i = 0; i < 6; i++) {
        double at = (i < 4 ? p->beat0 : p->breath0) + p->marks[i];
        if (at > t + 1e-9 && at < next) {
            next = at;
        }
    }
    return next;
}

static double usual(int i, double mass)
{
    return i <= vAc ? 20 * mass
        : i <= qPump ? 60 * pow(mass, 0.75)
        : i == speed ? 1
        : i == sensed ? 50
        : i < gO2 ? 1
        : i < gCo2 ? 4 * mass
        : i < gMark ? 20 * mass
        : i < alvO2 ? 10 * mass
                    : 100 * mass;
}

static void check(int code, const char *what)
{
    if (code < 0) {
        fprintf(stderr, "%s failed: %d\n", what, code);
        exit(3);
    }
}

static void read(const char *path, Patient *p, double *y, int *beats)
{
    FILE *file = fopen(path, "r");
    if (!file) {
        fprintf(stderr, "cannot read %s\n", path);
        exit(2);
    }
    static char line[1 << 16];
    size_t seen = 0;
    double *first = (double *)p;
    while (fgets(line, sizeof line, file)) {
        char *value = strchr(line, '=');
        if (!value) {
            continue;
        }
        *value++ = 0;
        double *to = NULL;
        int count = 1;
        double number = 0;
        if (!strcmp(line, "drainage")) {
            to = p->drainage, count = CELLS;
        } else if (!strcmp(line, "return")) {
            to = p->venous, count = CELLS;
        } else if (!strcmp(line, "state")) {
            to = y, count = SIZE;
        } else if (!strcmp(line, "mass")) {
            to = &p->mass;
        } else if (!strcmp(line, "beats")) {
            to = &number;
        }
        for (size_t i = 0; !to && i < sizeof names / sizeof *names; i++) {
            if (!strcmp(line, names[i])) {
                to = first + i;
                seen++;
            }
        }
        if (!to) {
            fprintf(stderr, "unknown name %s\n", line);
            exit(2);
        }
        for (int i = 0; i < count; i++) {
            char *rest;
            to[i] = strtod(value, &rest);
            if (rest == value) {
                fprintf(stderr, "%s needs %d numbers\n", line, count);
                exit(2);
            }
            value = rest;
        }
        if (to == &number) {
            *beats = (int)number;
        }
    }
    fclose(file);
    if (seen != sizeof names / sizeof *names) {
        fprintf(stderr, "%zu of %zu parameters given\n", seen, sizeof names / sizeof *names);
        exit(2);
    }
}

static long steps, located;

static void run(Patient *p, double *y, int beats, int bdf, double rtol)
{
    SUNContext context;
    check(SUNContext_Create(NULL, &context), "SUNContext_Create");
    N_Vector v = N_VMake_Serial(SIZE, y, context), weights = N_VNew_Serial(SIZE, context);
    for (int i = 0; i < SIZE; i++) {
        NV_Ith_S(weights, i) = rtol * usual(i, p->mass);
    }
    void *cv = CVodeCreate(bdf ? CV_BDF : CV_ADAMS, context);
    check(CVodeInit(cv, rhs, 0, v), "CVodeInit");
    check(CVodeSetUserData(cv, p), "CVodeSetUserData");
    check(CVodeSVtolerances(cv, rtol, weights), "CVodeSVtolerances");
    check(CVodeSetMaxNumSteps(cv, 100000), "CVodeSetMaxNumSteps");
    SUNMatrix matrix = NULL;
    SUNLinearSolver linear = NULL;
    SUNNonlinearSolver nonlinear = NULL;
    if (bdf) {
        matrix = SUNDenseMatrix(SIZE, SIZE, context);
        linear = SUNLinSol_Dense(v, matrix, context);
        check(CVodeSetLinearSolver(cv, linear, matrix), "CVodeSetLinearSolver");
    } else {
        nonlinear = SUNNonlinSol_FixedPoint(v, 0, context);
        check(CVodeSetNonlinearSolver(cv, nonlinear), "CVodeSetNonlinearSolver");
    }
    check(CVodeRootInit(cv, ONEWAY, roots), "CVodeRootInit");
    check(CVodeSetNoInactiveRootWarn(cv), "CVodeSetNoInactiveRootWarn");

    double t = 0, scratch[SIZE];
    beginBeat(p, 0, y);
    beginBreath(p, 0);
    memset(p->open, 0, sizeof p->open);
    derive(p, 0, y, scratch);
    for (int i = 0; i < ONEWAY; i++) {
        p->open[i] = y[flowOf(i)] > 0 || p->opening[i] > 0;
        y[flowOf(i)] = p->open[i] ? y[flowOf(i)] : 0;
    }
    int inBreath = 0;
    for (int beat = 0; beat < beats;) {
        double stop = nextMark(p, t);
        int direction[ONEWAY];
        for (int i = 0; i < ONEWAY; i++) {
            direction[i] = p->open[i] ? -1 : 1;
        }
        check(CVodeReInit(cv, t, v), "CVodeReInit");
        check(CVodeSetRootDirection(cv, direction), "CVodeSetRootDirection");
        check(CVodeSetStopTime(cv, stop), "CVodeSetStopTime");
        int code = CVode(cv, stop, v, &t, CV_NORMAL);
        check(code, "CVode");
        long n;
        CVodeGetNumSteps(cv, &n);
        steps += n;
        if (code == CV_ROOT_RETURN) {
            int found[ONEWAY];
            check(CVodeGetRootInfo(cv, found), "CVodeGetRootInfo");
            for (int i = 0; i < ONEWAY; i++) {
                if (found[i]) {
                    located++;
                    p->open[i] = !p->open[i];
                    y[flowOf(i)] = 0;
                }
            }
        }
        if (t >= p->beat0 + p->beatLength - 1e-10) {
            beginBeat(p, t, y);
            beat++;
            if (++inBreath >= (int)beatsPerBreath(p)) {
                inBreath = 0;
                beginBreath(p, t);
            }
        }
    }
    CVodeFree(&cv);
    if (bdf) {
        SUNLinSolFree(linear);
        SUNMatDestroy(matrix);
    } else {
        SUNNonlinSolFree(nonlinear);
    }
    N_VDestroy(weights);
    N_VDestroy(v);
    SUNContext_Free(&context);
}

int main(int argc, char **argv)
{
    if (argc < 4 || (strcmp(argv[2], "bdf") && strcmp(argv[2], "adams"))) {
        fprintf(stderr, "circulation INPUT bdf|adams RTOL [REPEATS]\n");
        return 2;
    }
    static Patient p;
    static double start[SIZE], y[SIZE];
    int beats = 0, repeats = argc > 4 ? atoi(argv[4]) : 1;
    read(argv[1], &p, start, &beats);
    double best = INFINITY;
    for (int r = 0; r < repeats; r++) {
        memcpy(y, start, sizeof y);
        steps = located = 0;
        p.evaluations = 0;
        struct timespec from, to;
        clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &from);
        run(&p, y, beats, !strcmp(argv[2], "bdf"), atof(argv[3]));
        clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &to);
        best = least(best, (double)(to.tv_sec - from.tv_sec) + 1e-9 * (double)(to.tv_nsec - from.tv_nsec));
    }
    printf("%.9g %ld %ld %ld\n", best, steps, p.evaluations, located);
    for (int i = 0; i < SIZE; i++) {
        printf("%.17g\n", y[i]);
    }
    return 0;
}
