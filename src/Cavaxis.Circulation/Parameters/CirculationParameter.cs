namespace Cavaxis.Circulation.Parameters;

/// <summary>The numbers of the model, in the order of <c>catalogue/circulation.json</c>, which gives meaning, unit, range and source of each.</summary>
public enum CirculationParameter
{
    /// <summary>Heart rate without reflex. Unit: /min.</summary>
    HeartRatePerMin,
    /// <summary>Breaths; the breath is locked to the nearest whole number of beats. Unit: /min.</summary>
    BreathsPerMin,
    /// <summary>Share of the breath in which the chest expands. Unit: 1.</summary>
    InspirationShare,
    /// <summary>Length of the atrial contraction in a beat of one second. Unit: s.</summary>
    AtrialContractionS,
    /// <summary>From the start of atrial to the start of ventricular activation, beat of one second. Unit: s.</summary>
    AtrioventricularDelayS,
    /// <summary>From ventricular activation to end systole, beat of one second. Unit: s.</summary>
    VentricularRiseS,
    /// <summary>From end systole to the end of relaxation, beat of one second. Unit: s.</summary>
    VentricularFallS,
    /// <summary>End-systolic elastance of the left ventricle (contractility). Unit: mmHg/mL.</summary>
    LeftVentricleElastanceMmHgPerMl,
    /// <summary>Volume of the left ventricle without pressure. Unit: mL.</summary>
    LeftVentricleZeroVolumeMl,
    /// <summary>Scale A of the end-diastolic curve A(exp(B(V-V0))-1), left. Unit: mmHg.</summary>
    LeftVentricleStiffnessMmHg,
    /// <summary>Exponent B of the end-diastolic curve, left. Unit: /mL.</summary>
    LeftVentricleStiffnessPerMl,
    /// <summary>End-systolic elastance of the right ventricle. Unit: mmHg/mL.</summary>
    RightVentricleElastanceMmHgPerMl,
    /// <summary>Volume of the right ventricle without pressure. Unit: mL.</summary>
    RightVentricleZeroVolumeMl,
    /// <summary>Scale A of the end-diastolic curve, right. Unit: mmHg.</summary>
    RightVentricleStiffnessMmHg,
    /// <summary>Exponent B of the end-diastolic curve, right. Unit: /mL.</summary>
    RightVentricleStiffnessPerMl,
    /// <summary>Elastance of the resting left atrium. Unit: mmHg/mL.</summary>
    LeftAtriumElastanceMmHgPerMl,
    /// <summary>Elastance of the contracting left atrium. Unit: mmHg/mL.</summary>
    LeftAtriumSystolicElastanceMmHgPerMl,
    /// <summary>Volume of the left atrium without pressure. Unit: mL.</summary>
    LeftAtriumZeroVolumeMl,
    /// <summary>Elastance of the resting right atrium. Unit: mmHg/mL.</summary>
    RightAtriumElastanceMmHgPerMl,
    /// <summary>Elastance of the contracting right atrium. Unit: mmHg/mL.</summary>
    RightAtriumSystolicElastanceMmHgPerMl,
    /// <summary>Volume of the right atrium without pressure. Unit: mL.</summary>
    RightAtriumZeroVolumeMl,
    /// <summary>Share of the left ventricle's pressure that reaches the right through the septum. Unit: 1.</summary>
    SeptumLeftToRight,
    /// <summary>Share of the right ventricle's pressure that reaches the left through the septum. Unit: 1.</summary>
    SeptumRightToLeft,
    /// <summary>Pressure of the pericardium when the heart has its usual volume. Unit: mmHg.</summary>
    PericardiumScaleMmHg,
    /// <summary>Volume of blood in the heart at which the pericardium has its scale pressure. Unit: mL.</summary>
    PericardiumVolumeMl,
    /// <summary>Volume over which pericardial pressure grows e-fold. Unit: mL.</summary>
    PericardiumWidthMl,
    /// <summary>Effective opening of the tricuspid valve. Unit: cm2.</summary>
    TricuspidAreaCm2,
    /// <summary>Effective opening of the pulmonary valve. Unit: cm2.</summary>
    PulmonaryValveAreaCm2,
    /// <summary>Effective opening of the mitral valve. Unit: cm2.</summary>
    MitralAreaCm2,
    /// <summary>Effective opening of the aortic valve. Unit: cm2.</summary>
    AorticValveAreaCm2,
    /// <summary>Viscous resistance of an open valve. Unit: mmHg s/mL.</summary>
    ValveResistanceMmHgSPerMl,
    /// <summary>Inertance of the blood in an open atrioventricular valve: density x length/area, 2.5 cm over 6 cm2. Unit: mmHg s2/mL.</summary>
    InflowInertanceMmHgS2PerMl,
    /// <summary>Inertance of the blood in an open outflow valve: 4 cm over 4 cm2. Unit: mmHg s2/mL.</summary>
    OutflowInertanceMmHgS2PerMl,
    /// <summary>Opening that stays in the closed aortic valve (regurgitation). Unit: cm2.</summary>
    AorticLeakAreaCm2,
    /// <summary>Opening that stays in the closed mitral valve (regurgitation). Unit: cm2.</summary>
    MitralLeakAreaCm2,
    /// <summary>Compliance of the ascending aorta and right arm and head arteries. Unit: mL/mmHg.</summary>
    AscendingComplianceMlPerMmHg,
    /// <summary>Compliance of the aortic arch and left arm and head arteries. Unit: mL/mmHg.</summary>
    ArchComplianceMlPerMmHg,
    /// <summary>Compliance of the descending aorta and its branches. Unit: mL/mmHg.</summary>
    DescendingComplianceMlPerMmHg,
    /// <summary>Unstressed volume of the ascending part. Unit: mL.</summary>
    AscendingZeroVolumeMl,
    /// <summary>Unstressed volume of the arch part. Unit: mL.</summary>
    ArchZeroVolumeMl,
    /// <summary>Unstressed volume of the descending part. Unit: mL.</summary>
    DescendingZeroVolumeMl,
    /// <summary>Inertance between ascending aorta and arch. Unit: mmHg s2/mL.</summary>
    ArchInertanceMmHgS2PerMl,
    /// <summary>Inertance between arch and descending aorta. Unit: mmHg s2/mL.</summary>
    DescendingInertanceMmHgS2PerMl,
    /// <summary>Resistance of each piece of the aorta. Unit: mmHg s/mL.</summary>
    AorticResistanceMmHgSPerMl,
    /// <summary>All systemic arterioles and capillaries together. Unit: mmHg s/mL.</summary>
    SystemicResistanceMmHgSPerMl,
    /// <summary>Share of systemic conductance: heart. Unit: 1.</summary>
    CoronaryShare,
    /// <summary>Share of systemic conductance: head, neck, arms, chest wall. Unit: 1.</summary>
    UpperShare,
    /// <summary>Share of systemic conductance: splanchnic organs (hepatic veins). The rest is kidneys, pelvis and legs. Unit: 1.</summary>
    SplanchnicShare,
    /// <summary>Part of the upper body fed from before the left carotid (right arm, right brain). Unit: 1.</summary>
    AscendingPartOfUpper,
    /// <summary>Compliance of upper body veins. Unit: mL/mmHg.</summary>
    UpperVenousComplianceMlPerMmHg,
    /// <summary>Compliance of splanchnic veins and liver. Unit: mL/mmHg.</summary>
    SplanchnicComplianceMlPerMmHg,
    /// <summary>Compliance of kidney, pelvis and leg veins. Unit: mL/mmHg.</summary>
    LowerVenousComplianceMlPerMmHg,
    /// <summary>Unstressed volume of upper body veins and capillaries. Unit: mL.</summary>
    UpperVenousZeroVolumeMl,
    /// <summary>Unstressed volume of splanchnic veins. Unit: mL.</summary>
    SplanchnicZeroVolumeMl,
    /// <summary>Unstressed volume of kidney, pelvis and leg veins and capillaries. Unit: mL.</summary>
    LowerVenousZeroVolumeMl,
    /// <summary>Upper veins to superior cava. Unit: mmHg s/mL.</summary>
    UpperVenousResistanceMmHgSPerMl,
    /// <summary>Hepatic outflow. Unit: mmHg s/mL.</summary>
    SplanchnicVenousResistanceMmHgSPerMl,
    /// <summary>Iliac and renal outflow. Unit: mmHg s/mL.</summary>
    LowerVenousResistanceMmHgSPerMl,
    /// <summary>Superior cava, volume at no transmural pressure. Unit: mL.</summary>
    SuperiorCavaZeroVolumeMl,
    /// <summary>Inferior cava above the hepatic veins, volume at no transmural pressure. Unit: mL.</summary>
    ThoracicCavaZeroVolumeMl,
    /// <summary>Inferior cava below and behind the liver, volume at no transmural pressure. Unit: mL.</summary>
    AbdominalCavaZeroVolumeMl,
    /// <summary>Scale K of the tube law K(v^2 - v^-1.5) with v = volume over zero volume. Unit: mmHg.</summary>
    CavalStiffnessMmHg,
    /// <summary>Superior cava to atrium at zero transmural pressure; falls with the square of area. Unit: mmHg s/mL.</summary>
    SuperiorCavaResistanceMmHgSPerMl,
    /// <summary>Thoracic inferior cava to atrium. Unit: mmHg s/mL.</summary>
    ThoracicCavaResistanceMmHgSPerMl,
    /// <summary>Through the diaphragm. Unit: mmHg s/mL.</summary>
    AbdominalCavaResistanceMmHgSPerMl,
    /// <summary>Part of the upper venous flow that enters the superior cava low, by the azygos vein. Unit: 1.</summary>
    AzygosShare,
    /// <summary>Part of the lower venous flow that enters by the renal veins. Unit: 1.</summary>
    RenalShareOfLower,
    /// <summary>Compliance of the pulmonary arteries. Unit: mL/mmHg.</summary>
    PulmonaryArteryComplianceMlPerMmHg,
    /// <summary>Unstressed volume of the pulmonary arteries. Unit: mL.</summary>
    PulmonaryArteryZeroVolumeMl,
    /// <summary>Resistance of the pulmonary circulation. Unit: mmHg s/mL.</summary>
    PulmonaryResistanceMmHgSPerMl,
    /// <summary>Compliance of the pulmonary veins. Unit: mL/mmHg.</summary>
    PulmonaryVenousComplianceMlPerMmHg,
    /// <summary>Unstressed volume of pulmonary capillaries and veins. Unit: mL.</summary>
    PulmonaryVenousZeroVolumeMl,
    /// <summary>Pulmonary veins to left atrium. Unit: mmHg s/mL.</summary>
    PulmonaryVenousResistanceMmHgSPerMl,
    /// <summary>Share of alveolar pressure that opposes flow in the capillaries (West's zone 2 where it exceeds venous pressure). Unit: 1.</summary>
    AlveolarVesselShare,
    /// <summary>Pleural pressure at the end of a quiet expiration, without PEEP. Unit: mmHg.</summary>
    PleuralPressureMmHg,
    /// <summary>Change of pleural pressure in inspiration: negative when the patient breathes, positive when the ventilator does. Unit: mmHg.</summary>
    PleuralSwingMmHg,
    /// <summary>Positive end-expiratory pressure. Unit: cmH2O.</summary>
    PeepCmH2O,
    /// <summary>Rise of alveolar pressure in inspiration above PEEP. Unit: cmH2O.</summary>
    AlveolarSwingCmH2O,
    /// <summary>Share of PEEP that reaches the pleura: chest wall over total elastance. Unit: 1.</summary>
    PleuralTransmission,
    /// <summary>Pressure in the abdomen at end expiration. Unit: mmHg.</summary>
    AbdominalPressureMmHg,
    /// <summary>Rise of abdominal pressure when the diaphragm descends. Unit: mmHg.</summary>
    AbdominalSwingMmHg,
    /// <summary>Haemoglobin. Unit: g/dL.</summary>
    HaemoglobinGPerDl,
    /// <summary>Factor from PO2 to standard PO2 for temperature, pH and PCO2. Unit: 1.</summary>
    VirtualPo2Factor,
    /// <summary>Oxygen consumption when supply is ample. Unit: mL/min.</summary>
    OxygenConsumptionMlPerMin,
    /// <summary>Share of consumption: heart. Unit: 1.</summary>
    HeartOxygenShare,
    /// <summary>Share of consumption: upper body and brain. Unit: 1.</summary>
    UpperOxygenShare,
    /// <summary>Share of consumption: splanchnic organs. The rest is the lower body. Unit: 1.</summary>
    SplanchnicOxygenShare,
    /// <summary>Venous content at which consumption is halved. Unit: mL/mL.</summary>
    CriticalOxygenMlPerMl,
    /// <summary>Carbon dioxide production. Unit: mL/min.</summary>
    CarbonDioxideProductionMlPerMin,
    /// <summary>Coefficient a of content = a P^b (1 + h(1 - S)), mL/mL, P in mmHg. Unit: 1.</summary>
    CarbonDioxideScale,
    /// <summary>Exponent b of that curve. Unit: 1.</summary>
    CarbonDioxideExponent,
    /// <summary>Factor h of that curve. Unit: 1.</summary>
    HaldaneFactor,
    /// <summary>Carbon dioxide stores of the tissues as a volume of blood of the same content. Unit: mL.</summary>
    TissueCarbonDioxideMl,
    /// <summary>Inspired oxygen fraction. Unit: 1.</summary>
    InspiredOxygenFraction,
    /// <summary>Alveolar ventilation, breath by breath average. Unit: L/min.</summary>
    AlveolarVentilationLPerMin,
    /// <summary>Share of lung flow that meets no ventilated alveolus. Unit: 1.</summary>
    ShuntFraction,
    /// <summary>Gas in the lungs. Unit: mL.</summary>
    LungGasVolumeMl,
    /// <summary>One while the pump is connected, zero when clamped. Unit: 1.</summary>
    CircuitOn,
    /// <summary>Flow that the speed is trimmed to, where flow is kept. Unit: L/min.</summary>
    TargetFlowLPerMin,
    /// <summary>How fast the speed is trimmed; zero keeps the speed. Unit: /s.</summary>
    FlowControlPerS,
    /// <summary>Pump speed over the speed of its curve, where speed is kept. Unit: 1.</summary>
    PumpSpeedRatio,
    /// <summary>Highest speed over the speed of the curve. Unit: 1.</summary>
    HighestSpeedRatio,
    /// <summary>Head of the pump without flow at the speed of its curve. Unit: mmHg.</summary>
    PumpShutOffMmHg,
    /// <summary>Fall of head with flow. Unit: mmHg/(L/min).</summary>
    PumpLinearMmHgPerLPerMin,
    /// <summary>Fall of head with flow squared. Unit: mmHg/(L/min)2.</summary>
    PumpQuadraticMmHgPerLPerMin2,
    /// <summary>Drop of drainage cannula and line, linear part. Unit: mmHg/(L/min).</summary>
    DrainageLinearMmHgPerLPerMin,
    /// <summary>Drop of drainage cannula and line, quadratic part. Unit: mmHg/(L/min)2.</summary>
    DrainageQuadraticMmHgPerLPerMin2,
    /// <summary>Drop of membrane lung, line and return cannula, linear part. Unit: mmHg/(L/min).</summary>
    ReturnLinearMmHgPerLPerMin,
    /// <summary>Drop of membrane lung, line and return cannula, quadratic part. Unit: mmHg/(L/min)2.</summary>
    ReturnQuadraticMmHgPerLPerMin2,
    /// <summary>Inertance of the blood in the circuit: 2 m over 0.71 cm2. Unit: mmHg s2/mL.</summary>
    CircuitInertanceMmHgS2PerMl,
    /// <summary>Added resistance when the vein closes on the holes. Unit: mmHg s/mL.</summary>
    SuctionResistanceMmHgSPerMl,
    /// <summary>Share of the pump flow that returns to an artery: 0 V-V, 1 V-A, between V-AV. Unit: 1.</summary>
    ArterialShareOfReturn,
    /// <summary>Share of the arterial return that enters the ascending aorta (central or right axillary) rather than the femoral artery. Unit: 1.</summary>
    AscendingShareOfArterialReturn,
    /// <summary>Blood in drainage cannula and line. Unit: mL.</summary>
    DrainageLineMl,
    /// <summary>Blood in the membrane lung and pump. Unit: mL.</summary>
    MembraneLungMl,
    /// <summary>Blood in return line and cannula. Unit: mL.</summary>
    ReturnLineMl,
    /// <summary>Rated flow of the membrane lung. Unit: L/min.</summary>
    MembraneRatedFlowLPerMin,
    /// <summary>Oxygen fraction of the sweep gas. Unit: 1.</summary>
    SweepOxygenFraction,
    /// <summary>Sweep gas flow. Unit: L/min.</summary>
    SweepLPerMin,
    /// <summary>Diffusing conductance of the membrane lung for carbon dioxide. Unit: mL/min/mmHg.</summary>
    MembraneCarbonDioxideMlPerMinPerMmHg,
    /// <summary>Exchange between neighbouring parts of a cava by eddies. Unit: mL/s.</summary>
    CavalMixingMlPerS,
    /// <summary>Exchange between neighbouring parts of the atrium without a return jet. Unit: mL/s.</summary>
    AtrialMixingMlPerS,
    /// <summary>Exchange between parts of the atrium that the return jet stirs, per return flow. Unit: 1.</summary>
    JetMixing,
    /// <summary>Volume of a balloon pump in the descending aorta, inflated in diastole. Unit: mL.</summary>
    BalloonVolumeMl,
    /// <summary>Flow of a left ventricular vent into the drainage line when the ventricle is full. Unit: L/min.</summary>
    VentFlowLPerMin,
    /// <summary>Flow of a pump from the left ventricle into the ascending aorta when the ventricle is full. Unit: L/min.</summary>
    TransvalvularFlowLPerMin,
    /// <summary>Effective opening between the atria. Unit: cm2.</summary>
    SeptalOpeningCm2,
    /// <summary>Strength of the arterial baroreflex: 0 none, 1 usual. Unit: 1.</summary>
    ReflexGain,
    /// <summary>Mean arterial pressure at which the reflex rests. Unit: mmHg.</summary>
    ReflexPressureMmHg,
    /// <summary>Blood in the patient. Unit: mL.</summary>
    BloodVolumeMl,
}
