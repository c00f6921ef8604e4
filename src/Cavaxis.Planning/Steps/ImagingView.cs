using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Steps;

/// <summary>A view, what it shows or cannot show, and what it needs.</summary>
/// <param name="Words">The view in words, with its limit where it has one.</param>
/// <param name="IsOnHand">Whether what it needs is on hand.</param>
public sealed record ImagingView(string Words, Func<ResourceSection, bool> IsOnHand)
{
    /// <summary>Transoesophageal bicaval view.</summary>
    public static ImagingView TransoesophagealBicaval { get; } = new(
        "transoesophageal ultrasound, bicaval view near 90°: SVC, both junctions, wire, jet", r => r.TransoesophagealEcho == Availability.OnHand);

    /// <summary>Transgastric view of the IVC.</summary>
    public static ImagingView TransgastricCaval { get; } = new(
        "transoesophageal ultrasound, transgastric view of the IVC and hepatic vein", r => r.TransoesophagealEcho == Availability.OnHand);

    /// <summary>Transoesophageal colour Doppler of the return jet.</summary>
    public static ImagingView TransoesophagealJet { get; } = new(
        "transoesophageal colour Doppler of the return jet and the tricuspid valve", r => r.TransoesophagealEcho == Availability.OnHand);

    /// <summary>Transoesophageal view of the descending aorta.</summary>
    public static ImagingView TransoesophagealAorta { get; } = new(
        "transoesophageal ultrasound of the descending aorta, long and short axis", r => r.TransoesophagealEcho == Availability.OnHand);

    /// <summary>Subcostal bicaval view.</summary>
    public static ImagingView SubcostalBicaval { get; } = new(
        "transthoracic ultrasound, subcostal caval view: wire and cannula in the IVC; window permitting", r => r.TransthoracicEcho == Availability.OnHand);

    /// <summary>Subcostal four-chamber view.</summary>
    public static ImagingView SubcostalFourChamber { get; } = new(
        "transthoracic ultrasound, subcostal four-chamber view with colour: jet to the valve, loop in the ventricle", r => r.TransthoracicEcho == Availability.OnHand);

    /// <summary>Vascular ultrasound in two planes.</summary>
    public static ImagingView VascularTwoPlanes { get; } = new(
        "vascular ultrasound, transverse and longitudinal", r => r.VascularUltrasound == Availability.OnHand || r.TransthoracicEcho == Availability.OnHand);

    /// <summary>Fluoroscopy of the wire.</summary>
    public static ImagingView FluoroscopyWire { get; } = new(
        "fluoroscopy: course of the wire against the spine and diaphragm", r => r.Fluoroscopy == Availability.OnHand || r.HybridRoom == Availability.OnHand);

    /// <summary>What fluoroscopy cannot show.</summary>
    public static ImagingView FluoroscopySoftTissue { get; } = new(
        "fluoroscopy and chest film do not show the tricuspid valve, the junctions or the hepatic veins", _ => false);

    /// <summary>What a chest film cannot show.</summary>
    public static ImagingView ChestFilm { get; } = new(
        "a chest film shows only a still picture in one plane, after the fact", _ => false);

    /// <summary>The tip without a wire.</summary>
    public static ImagingView TipWithoutWire { get; } = new(
        "no view shows the tip reliably once the wire is out", _ => false);

    /// <summary>Direct sight.</summary>
    public static ImagingView DirectView { get; } = new("direct sight of the surgeon", r => r.VascularSurgeon == Availability.OnHand);

    /// <summary>Pressures of the circuit.</summary>
    public static ImagingView CircuitPressures { get; } = new("pressures of the circuit before the pump and after the lung", _ => true);
}
