namespace Cavaxis.Planning.Rules;

/// <summary>The numbers that planning holds results against.</summary>
public enum LimitName
{
    /// <summary>Pressure at the pump inlet below which drainage is called strained, mmHg.</summary>
    InletPressureMmHg,

    /// <summary>Pressure at the pump inlet that must not be planned for, mmHg.</summary>
    InletPressureAbsoluteMmHg,

    /// <summary>Pressure after the membrane lung above which return is called strained, mmHg.</summary>
    ReturnPressureMmHg,

    /// <summary>Pressure after the membrane lung that must not be planned for, mmHg.</summary>
    ReturnPressureAbsoluteMmHg,

    /// <summary>Outer diameter of a cannula over the inner diameter of its vein: caution above.</summary>
    CannulaToVeinCaution,

    /// <summary>Outer diameter of a cannula over the inner diameter of its vein: stop above.</summary>
    CannulaToVeinStop,

    /// <summary>Outer diameter of a cannula over the inner diameter of its artery: caution above.</summary>
    CannulaToArteryCaution,

    /// <summary>Outer diameter of a cannula over the inner diameter of its artery: stop above.</summary>
    CannulaToArteryStop,

    /// <summary>Inner diameter of an axillary artery below which a graft is called narrow, mm.</summary>
    AxillaryArteryCautionMm,

    /// <summary>Inner diameter of an axillary artery below which no graft is planned, mm.</summary>
    AxillaryArteryForGraftMm,

    /// <summary>Distance between the nearest drainage and return holes, mm: caution below.</summary>
    PortSeparationMm,

    /// <summary>Arterial saturation to plan for, percent.</summary>
    TargetSaturationPercent,

    /// <summary>Systemic flow index to plan for, L/min/m².</summary>
    TargetCardiacIndexLPerMinPerM2,

    /// <summary>Pump flow over cardiac output in veno-venous support below which saturation is in doubt.</summary>
    FlowToCardiacOutput,

    /// <summary>Oxygen delivery over consumption: caution below.</summary>
    DeliveryToConsumption,

    /// <summary>Length of the insertable part left outside the skin for fixing, mm.</summary>
    LengthOutsideMm,

    /// <summary>Share of the return that goes to the vein in veno-arterio-venous support.</summary>
    VenousShareOfReturn,

    /// <summary>PO2 after the membrane lung to plan for, mmHg.</summary>
    PostMembranePo2MmHg,

    /// <summary>Share of the flow needed that a plan carries within the pressure limits: stop below.</summary>
    FlowShareStop,

    /// <summary>Probability that every port lies in its zone: warning below.</summary>
    FitProbabilityWarning,

    /// <summary>Probability that every port lies in its zone: stop below.</summary>
    FitProbabilityStop,

    /// <summary>Recirculation of a plan above which caution is called, percent.</summary>
    RecirculationCautionPercent,

    /// <summary>Pulmonary venous pressure under arterial return above which a warning is called, mmHg.</summary>
    WedgeUnderSupportMmHg,

    /// <summary>Share of the beat with the aortic valve open below which a warning is called, percent.</summary>
    AorticValveOpenPercent,
}
