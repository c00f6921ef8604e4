"""The equations of docs/models/circulation.md a third time, solved by SciPy's implicit Radau IIA method of order 5.

circulation.py INPUT RTOL reads lines name=value and prints the state after the beats asked for, one number a line.
Blood moves along a table of flows (from, to); gas along the same kind of table by one incidence matrix for all three carried substances.
"""
import sys
from math import cos, exp, log, pi, sqrt
from types import SimpleNamespace

import numpy as np
from scipy.integrate import solve_ivp

CM, DRY, BTPS, LITRES = 0.73555912, 713.0, 863.0, 0.06
ORIFICE = 1060 / 2 / 133.322387415 * 1e-4
VOLUMES = "ra rv pa pv la lv asc arch desc up spl low svc tc ac".split()
V = {name: i for i, name in enumerate(VOLUMES)}
VALVE, ARCH, DESC, PUMP, SPEED, SENSED, REFLEX = 15, 19, 20, 21, 22, 23, 24
O2, CO2, MARK, ALVEOLAR, TOTALS, SIZE = 28, 53, 78, 88, 90, 96
NODES = "c0 c1 c2 c3 c4 c5 c6 c7 c8 c9 rv pa pv la lv asc arch desc up spl low heart drain membrane back".split()
N = {name: i for i, name in enumerate(NODES)}
SITE = "svc svc ra ra ra ra tc ac ac ac".split()
PART = np.array([0.5, 0.5, 0.25, 0.35, 0.2, 0.2, 1, 0.35, 0.35, 0.3])
HOLDER = np.array([V[s] for s in SITE] + [V[n] for n in NODES[10:21]])
TISSUES = ["heart", "up", "spl", "low"]

EDGES = [(f"c{a}", f"c{b}") for a, b in [(0, 1), (1, 2), (2, 3), (3, 4), (5, 3), (6, 5), (7, 6), (8, 7), (9, 8)]]
EDGES += [("up", "c0"), ("up", "c1"), ("spl", "c7"), ("low", "c8"), ("low", "c9"), ("la", "c3"), ("asc", "heart"), ("heart", "c5")]
EDGES += [("c4", "rv"), ("rv", "pa"), ("pa", "pv"), ("pv", "la"), ("la", "lv"), ("lv", "la"), ("lv", "asc"), ("asc", "lv"), ("lv", "drain")]
EDGES += [("asc", "arch"), ("arch", "desc"), ("asc", "up"), ("arch", "up"), ("desc", "spl"), ("desc", "low")]
EDGES += [(f"c{i}", "drain") for i in range(10)] + [("back", f"c{i}") for i in range(10)]
EDGES += [("drain", "membrane"), ("membrane", "back"), ("back", "asc"), ("back", "desc")]
TAIL = np.array([N[a] for a, _ in EDGES])
HEAD = np.array([N[b] for _, b in EDGES])
INCIDENCE = np.zeros((len(NODES), len(EDGES)))
INCIDENCE[TAIL, range(len(EDGES))] = -1
INCIDENCE[HEAD, range(len(EDGES))] = 1


def clip(x):
    return min(1.0, max(0.0, x))


def usual_sizes(mass):
    return np.array([20 * mass] * 15 + [60 * mass ** 0.75] * 7 + [1, 50, 1, 1, 1, 1] + [4 * mass] * 25 + [20 * mass] * 25
                    + [10 * mass] * 10 + [100 * mass] * 8)


class Patient:
    def __init__(self, p, drainage, venous):
        self.p, self.drainage, self.venous = p, drainage, venous
        self.open = [False] * 5
        rest = 1 - p.HeartOxygenShare - p.UpperOxygenShare - p.SplanchnicOxygenShare
        self.use = np.array([p.HeartOxygenShare, p.UpperOxygenShare, p.SplanchnicOxygenShare, rest])
        self.tissue = [N[t] for t in TISSUES]
        self.fixed = np.array([0.008 * p.BloodVolumeMl, p.DrainageLineMl, p.MembraneLungMl, p.ReturnLineMl])
        self.store = np.zeros(25)
        self.store[self.tissue] = self.use * p.TissueCarbonDioxideMl
        self.areas = [p.TricuspidAreaCm2, p.PulmonaryValveAreaCm2, p.MitralAreaCm2, p.AorticValveAreaCm2]
        self.beats_per_breath = max(1, round(p.HeartRatePerMin / p.BreathsPerMin))

    def begin_beat(self, t, y):
        p = self.p
        self.beat, self.period = t, 60 / (p.HeartRatePerMin * (1 + 0.35 * y[REFLEX]))
        whole = p.AtrioventricularDelayS + p.VentricularRiseS + p.VentricularFallS
        scale = min(sqrt(self.period), 0.92 * self.period / whole)
        self.atrial = p.AtrialContractionS * scale
        self.start = p.AtrioventricularDelayS * scale
        self.peak = self.start + p.VentricularRiseS * scale
        self.relaxed = self.peak + p.VentricularFallS * scale

    def begin_breath(self, t):
        self.breath, length = t, self.beats_per_breath * self.period
        self.inward = self.p.InspirationShare * length
        self.outward = min(length, 2.2 * self.inward)

    def next_mark(self, t):
        marks = [self.beat + m for m in (self.atrial, self.start, self.peak, self.relaxed)]
        marks += [self.breath + m for m in (self.inward, self.outward)]
        return min([m for m in marks if m > t + 1e-9] + [self.beat + self.period])

    def chest(self, t):
        r = t - self.breath
        return 0.5 - 0.5 * cos(pi * (clip(r / self.inward) + clip((r - self.inward) / (self.outward - self.inward))))

    def heart(self, t, y):
        """Pressures of chambers and great vessels."""
        p, b = self.p, t - self.beat
        fall = clip((b - self.peak) / (self.relaxed - self.peak))
        e = 0.5 - 0.5 * cos(pi * (clip((b - self.start) / (self.peak - self.start)) + fall))
        a = 0.5 - 0.5 * cos(2 * pi * clip(b / self.atrial))
        pleura = p.PleuralPressureMmHg + p.PleuralTransmission * p.PeepCmH2O * CM + p.PleuralSwingMmHg * self.chest(t)
        filled = y[V["ra"]] + y[V["rv"]] + y[V["la"]] + y[V["lv"]]
        sac = pleura + p.PericardiumScaleMmHg * exp(min(5, (filled - p.PericardiumVolumeMl) / p.PericardiumWidthMl))
        more = 1 + 0.35 * y[REFLEX + 2]

        def wall(volume, zero, elastance, scale, exponent):
            x = volume - zero
            return e * more * elastance * x + (1 - e) * scale * (exp(min(6, exponent * x)) - 1)

        left = wall(y[V["lv"]], p.LeftVentricleZeroVolumeMl, p.LeftVentricleElastanceMmHgPerMl,
                    p.LeftVentricleStiffnessMmHg, p.LeftVentricleStiffnessPerMl)
        right = wall(y[V["rv"]], p.RightVentricleZeroVolumeMl, p.RightVentricleElastanceMmHgPerMl,
                     p.RightVentricleStiffnessMmHg, p.RightVentricleStiffnessPerMl)
        flat = lambda share: p.CavalStiffnessMmHg * (min(1, max(0.02, share)) ** -1.5 - 1 - 1.5 * (1 - min(1, max(0.02, share))))
        la = (p.LeftAtriumElastanceMmHgPerMl + a * (p.LeftAtriumSystolicElastanceMmHgPerMl - p.LeftAtriumElastanceMmHgPerMl))
        ra = (p.RightAtriumElastanceMmHgPerMl + a * (p.RightAtriumSystolicElastanceMmHgPerMl - p.RightAtriumElastanceMmHgPerMl))
        pr = dict(pleura=pleura,
                  lv=sac + left + p.SeptumRightToLeft * right, rv=sac + right + p.SeptumLeftToRight * left,
                  la=sac + la * (y[V["la"]] - p.LeftAtriumZeroVolumeMl) - flat(y[V["la"]] / p.LeftAtriumZeroVolumeMl),
                  ra=sac + ra * (y[V["ra"]] - p.RightAtriumZeroVolumeMl) - flat(y[V["ra"]] / p.RightAtriumZeroVolumeMl),
                  pa=pleura + (y[V["pa"]] - p.PulmonaryArteryZeroVolumeMl) / p.PulmonaryArteryComplianceMlPerMmHg,
                  asc=pleura + (y[V["asc"]] - p.AscendingZeroVolumeMl) / p.AscendingComplianceMlPerMmHg)
        pr["opening"] = [pr["ra"] - pr["rv"], pr["rv"] - pr["pa"], pr["la"] - pr["lv"], pr["lv"] - pr["asc"]]
        return pr

    def balloon(self, t):
        b = t - self.beat
        ease = lambda x: x * x * (3 - 2 * x)
        return 1 - ease(clip(b / self.start)) + ease(clip((b - self.peak) / (self.relaxed - self.peak)))

    def press(self, element, t, y):
        return self.rates(t, y, only_circuit=True) if element == 4 else self.heart(t, y)["opening"][element]

    def oxygen(self, po2):
        p = self.p
        x = po2 * p.VirtualPo2Factor
        z = (x * x - 1600) / (x * x + 1600)
        poly = -0.0173 - 0.002 * z + 0.5301 * z ** 2 + 0.464 * z ** 3 - 1.2602 * z ** 4 - 1.2321 * z ** 5
        odds = (x ** 3 + 150 * x) / 23400 * exp(poly)
        return 0.0134 * p.HaemoglobinGPerDl * odds / (1 + odds) + 3.1e-5 * po2

    def haldane(self, oxygen):
        return 1 + self.p.HaldaneFactor * max(0, 1 - oxygen / (0.0134 * self.p.HaemoglobinGPerDl))

    def rates(self, t, state, only_circuit=False):
        p = self.p
        y = state.tolist()
        h = self.heart(t, y)
        pleura, ra, asc, la = h["pleura"], h["ra"], h["asc"], h["la"]
        chest = self.chest(t)
        belly = p.AbdominalPressureMmHg + p.AbdominalSwingMmHg * chest
        alveoli = CM * (p.PeepCmH2O + p.AlveolarSwingCmH2O * chest)
        shrink = 1 - 0.12 * y[REFLEX + 3]
        _, _, _, ypv, _, ylv, _, yarch, ydesc, yup, yspl, ylow, ysvc, ytc, yac = y[:15]
        tube = lambda v: p.CavalStiffnessMmHg * (max(v, 0.02) ** 2 - max(v, 0.02) ** -1.5)
        s, c, a = ysvc / p.SuperiorCavaZeroVolumeMl, ytc / p.ThoracicCavaZeroVolumeMl, yac / p.AbdominalCavaZeroVolumeMl
        pv = pleura + (ypv - p.PulmonaryVenousZeroVolumeMl) / p.PulmonaryVenousComplianceMlPerMmHg
        arch = pleura + (yarch - p.ArchZeroVolumeMl) / p.ArchComplianceMlPerMmHg
        desc = (ydesc + p.BalloonVolumeMl * self.balloon(t) - p.DescendingZeroVolumeMl) / p.DescendingComplianceMlPerMmHg
        svc, tc, ac = pleura + tube(s), pleura + tube(c), belly + tube(a)

        # Circuit.
        q, n = y[PUMP], y[SPEED]
        flow = LITRES * q
        freely = lambda v: min(1, 1.15 * v * v / (v * v + 0.15))
        site = {"svc": (freely(s), svc), "ra": (freely(y[0] / p.RightAtriumZeroVolumeMl), ra), "tc": (freely(c), tc), "ac": (freely(a), ac)}
        weight = [d * site[k][0] for d, k in zip(self.drainage, SITE)]
        wide = max(sum(weight), 1e-4)
        source = sum(w * site[k][1] for w, k in zip(weight, SITE)) / wide
        arterial, first = p.ArterialShareOfReturn, p.AscendingShareOfArterialReturn
        sink = (1 - arterial) * sum(r * site[k][1] for r, k in zip(self.venous, SITE)) + arterial * (first * asc + (1 - first) * desc)
        head = p.PumpShutOffMmHg * n * n + p.PumpLinearMmHgPerLPerMin * n * flow + p.PumpQuadraticMmHgPerLPerMin2 * flow * abs(flow)
        before = source - p.SuctionResistanceMmHgSPerMl * (1 / wide - 1) * q - flow * (
            p.DrainageLinearMmHgPerLPerMin + p.DrainageQuadraticMmHgPerLPerMin2 * abs(flow))
        after = sink + flow * (p.ReturnLinearMmHgPerLPerMin + p.ReturnQuadraticMmHgPerLPerMin2 * abs(flow))
        drives = p.CircuitOn * (before + head - after) - 1000 * (1 - p.CircuitOn)
        if only_circuit:
            return drives

        g = 1 / (p.SystemicResistanceMmHgSPerMl * (1 + 0.4 * y[REFLEX + 1]))
        up = (yup - p.UpperVenousZeroVolumeMl) / p.UpperVenousComplianceMlPerMmHg
        spl = belly + (yspl - shrink * p.SplanchnicZeroVolumeMl) / p.SplanchnicComplianceMlPerMmHg
        low = (ylow - shrink * p.LowerVenousZeroVolumeMl) / p.LowerVenousComplianceMlPerMmHg
        coronary = g * p.CoronaryShare * (asc - ra)
        right = g * p.UpperShare * p.AscendingPartOfUpper * (asc - up)
        left = g * p.UpperShare * (1 - p.AscendingPartOfUpper) * (arch - up)
        gut = g * p.SplanchnicShare * (desc - spl)
        legs = g * (1 - p.CoronaryShare - p.UpperShare - p.SplanchnicShare) * (desc - low)
        inlet = lambda vein, cava, shut: 0.5 * (vein - cava + sqrt((vein - shut) ** 2 + 1) - sqrt((cava - shut) ** 2 + 1))
        upper = inlet(up, svc, 0) / p.UpperVenousResistanceMmHgSPerMl
        hepatic = inlet(spl, ac, belly) / p.SplanchnicVenousResistanceMmHgSPerMl
        lower = inlet(low, ac, belly) / p.LowerVenousResistanceMmHgSPerMl
        from_svc = s * s * (svc - ra) / p.SuperiorCavaResistanceMmHgSPerMl
        from_tc = c * c * (tc - ra) / p.ThoracicCavaResistanceMmHgSPerMl
        diaphragm = a * a * (ac - tc) / p.AbdominalCavaResistanceMmHgSPerMl
        zone = p.AlveolarVesselShare * alveoli
        lung = max(0, (h["pa"] - 0.5 * (pv + zone + sqrt((pv - zone) ** 2 + 1))) / p.PulmonaryResistanceMmHgSPerMl)
        to_la = (pv - la) / p.PulmonaryVenousResistanceMmHgSPerMl
        hole = lambda dp, area: area * dp / sqrt(ORIFICE * (abs(dp) + 1))
        opening = h["opening"]
        aortic_leak, mitral_leak = hole(max(0, -opening[3]), p.AorticLeakAreaCm2), hole(max(0, -opening[2]), p.MitralLeakAreaCm2)
        septal = hole(la - ra, p.SeptalOpeningCm2)
        filling = ylv * ylv / (ylv * ylv + 2 * p.LeftVentricleZeroVolumeMl ** 2)
        across = p.TransvalvularFlowLPerMin / LITRES * filling
        vent = min(max(q, 0), p.VentFlowLPerMin / LITRES * filling)
        out = [(q - vent) * w / wide for w in weight]
        back = [q * (1 - arterial) * r for r in self.venous]
        tri, pul, mit, aor, qarch, qdesc = y[VALVE:PUMP]
        to_asc, to_desc = q * arterial * first, q * arterial * (1 - first)
        net = [b - o for b, o in zip(back, out)]
        dsvc = upper - from_svc + net[0] + net[1]
        dtc = diaphragm - from_tc + net[6]
        dac = hepatic + lower - diaphragm + net[7] + net[8] + net[9]
        dra = from_svc + from_tc + coronary + septal - tri + net[2] + net[3] + net[4] + net[5]

        d = np.empty(SIZE)
        d[:15] = [dra, tri - pul, pul - lung, lung - to_la, to_la - septal - mit + mitral_leak,
                  mit - mitral_leak - aor + aortic_leak - across - vent,
                  aor - aortic_leak + across + to_asc - qarch - right - coronary, qarch - qdesc - left, qdesc + to_desc - gut - legs,
                  right + left - upper, gut - hepatic, legs - lower, dsvc, dtc, dac]
        for i, area in enumerate(self.areas):
            f = y[VALVE + i]
            mass = p.OutflowInertanceMmHgS2PerMl if i % 2 else p.InflowInertanceMmHgS2PerMl
            d[VALVE + i] = (opening[i] - f * (p.ValveResistanceMmHgSPerMl + ORIFICE / area ** 2 * abs(f))) / mass if self.open[i] else 0
        d[ARCH] = (asc - arch - p.AorticResistanceMmHgSPerMl * qarch) / p.ArchInertanceMmHgS2PerMl
        d[DESC] = (arch - desc - p.AorticResistanceMmHgSPerMl * qdesc) / p.DescendingInertanceMmHgS2PerMl
        d[PUMP] = drives / p.CircuitInertanceMmHgS2PerMl if self.open[4] else 0
        trim = p.FlowControlPerS * (p.TargetFlowLPerMin - flow) / p.TargetFlowLPerMin
        d[SPEED] = p.CircuitOn * (trim if trim < 0 else trim * min(1, 10 * max(0, 1 - n / p.HighestSpeedRatio)))
        want = (p.ReflexPressureMmHg - y[SENSED]) / 25
        nerve = p.ReflexGain * want / sqrt(1 + want * want)
        d[SENSED] = (arch - y[SENSED]) / 2
        for i, lag in enumerate((2, 6, 8, 20)):
            d[REFLEX + i] = (nerve - y[REFLEX + i]) / lag

        # Gas.
        blood = np.concatenate((state[HOLDER], self.fixed))
        blood[:10] *= PART
        blood = np.maximum(blood, 1e-3)
        content = np.zeros((25, 3))
        content[:, 0] = state[O2:CO2] / blood
        content[:, 1] = state[CO2:MARK] / (blood + self.store)
        content[:10, 2] = state[MARK:ALVEOLAR] / blood[:10]
        content[24, 2] = 1
        azygos, renal = p.AzygosShare * upper, p.RenalShareOfLower * lower
        top, iliac = upper - azygos, lower - renal
        j8 = iliac + net[9] - PART[9] * dac
        eddy, stir = p.CavalMixingMlPerS, p.AtrialMixingMlPerS
        flows = np.array([
            top + net[0] - PART[0] * dsvc, from_svc, from_svc + net[2] - PART[2] * dra, tri - net[4] + PART[4] * dra,
            from_tc + coronary + net[5] - PART[5] * dra, from_tc, diaphragm, j8 + renal + net[8] - PART[8] * dac, j8,
            top, azygos, hepatic, renal, iliac, septal, coronary, coronary,
            tri, pul, lung, to_la, mit, mitral_leak, aor + across, aortic_leak, vent,
            qarch, qdesc, right, left, gut, legs, *out, *back, q, q, to_asc, to_desc])
        moved = np.maximum(flows, 0)[:, None] * content[TAIL] + np.minimum(flows, 0)[:, None] * content[HEAD]
        exchange = np.array([eddy, eddy + 0.25 * stir, stir, stir, stir, eddy + 0.25 * stir, eddy, eddy, eddy])[:, None]
        given_back = np.asarray(back)
        exchange += p.JetMixing * np.maximum(given_back[TAIL[:9]] + given_back[HEAD[:9]], 0)[:, None]
        moved[:9] += exchange * (content[TAIL[:9]] - content[HEAD[:9]])
        gain = INCIDENCE @ moved

        # Lungs, tissues, membrane lung.
        o2, co2 = content[:, 0].tolist(), content[:, 1].tolist()
        po2, pco2 = (x * BTPS / p.LungGasVolumeMl for x in y[ALVEOLAR:TOTALS])
        air, exposed = p.AlveolarVentilationLPerMin * 1000 / 60 / BTPS, lung * (1 - p.ShuntFraction)
        end = self.oxygen(po2)
        end_co2 = p.CarbonDioxideScale * max(pco2, 0.1) ** p.CarbonDioxideExponent * self.haldane(end)
        uptake, output = exposed * (end - o2[N["pa"]]), exposed * (co2[N["pa"]] - end_co2)
        made = p.CarbonDioxideProductionMlPerMin / 60
        used = self.use * p.OxygenConsumptionMlPerMin / 60 / (1 + (p.CriticalOxygenMlPerMl / content[self.tissue, 0]) ** 2)
        gas, qq, inlet, inlet_co2 = DRY * p.SweepOxygenFraction, max(q, 0), o2[N["drain"]], co2[N["drain"]]
        units = log(5) * (gas - 40) / (DRY - 40) * 12 / p.HaemoglobinGPerDl * (p.MembraneRatedFlowLPerMin / max(LITRES * qq, 0.02)) ** (2 / 3)
        given = qq * (self.oxygen(gas) - inlet) * (1 - exp(-units))
        tension = (max(inlet_co2, 1e-4) / (p.CarbonDioxideScale * self.haldane(inlet))) ** (1 / p.CarbonDioxideExponent)
        sweep, conduct = p.SweepLPerMin * 1000 / 60 * 273.15 / 293.15, p.MembraneCarbonDioxideMlPerMinPerMmHg / 60
        held = max(qq, 0.3) * p.CarbonDioxideExponent * inlet_co2 / tension
        taken = p.CircuitOn * held * tension * (1 - exp(-sweep * conduct / (sweep + conduct * DRY) / held)) * qq / (qq + 0.5)
        gain[N["pv"], 0] += uptake
        gain[N["pv"], 1] -= output
        gain[self.tissue, 0] -= used
        gain[self.tissue, 1] += self.use * made
        gain[N["membrane"], 0] += given
        gain[N["membrane"], 1] -= taken
        d[O2:CO2], d[CO2:MARK], d[MARK:ALVEOLAR] = gain[:, 0], gain[:, 1], gain[:10, 2]
        breathed_in, breathed_out = air * (DRY * p.InspiredOxygenFraction - po2), air * pco2
        d[ALVEOLAR:] = [breathed_in - uptake, output - breathed_out, breathed_in, given, used.sum(), breathed_out, taken, made]
        return d


def run(patient, y, beats, rtol, sizes):
    flow_of = [VALVE, VALVE + 1, VALVE + 2, VALVE + 3, PUMP]
    t, done, in_breath = 0.0, 0, 0
    patient.begin_beat(t, y)
    patient.begin_breath(t)
    for i in range(5):
        patient.open[i] = y[flow_of[i]] > 0 or patient.press(i, t, y) > 0
        y[flow_of[i]] = y[flow_of[i]] if patient.open[i] else 0
    step = None
    while done < beats:
        def watch(i):
            event = (lambda t, y: y[flow_of[i]]) if patient.open[i] else (lambda t, y: patient.press(i, t, y))
            event.terminal, event.direction = True, -1 if patient.open[i] else 1
            return event

        stop = patient.next_mark(t)
        result = solve_ivp(patient.rates, (t, stop), y, method="Radau", rtol=rtol, atol=rtol * sizes,
                           first_step=min(2e-4, stop - t), events=[watch(i) for i in range(5)])
        if result.status < 0:
            sys.exit("Radau: " + result.message)
        t, y = result.t[-1], result.y[:, -1].copy()
        for i, found in enumerate(result.t_events):
            if result.status == 1 and len(found):
                patient.open[i] = not patient.open[i]
                y[flow_of[i]] = 0
        if t >= patient.beat + patient.period - 1e-10:
            patient.begin_beat(t, y)
            done, in_breath = done + 1, in_breath + 1
            if in_breath >= patient.beats_per_breath:
                in_breath = 0
                patient.begin_breath(t)
    return y


def main(path, rtol):
    with open(path, encoding="ascii") as lines:
        given = {name: [float(x) for x in value.split()] for name, value in (line.split("=") for line in lines if "=" in line)}
    drainage, venous, state = given.pop("drainage"), given.pop("return"), np.array(given.pop("state"))
    beats, mass = int(given.pop("beats")[0]), given.pop("mass")[0]
    patient = Patient(SimpleNamespace(**{name: value[0] for name, value in given.items()}), drainage, venous)
    for number in run(patient, state, beats, rtol, usual_sizes(mass)):
        print(repr(float(number)))


if __name__ == "__main__":
    main(sys.argv[1], float(sys.argv[2]))
