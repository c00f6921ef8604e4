using Cavaxis.Arteries.Tree;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Findings;

/// <summary>
/// The zone in which the two kinds of blood meet, along the aorta from the valve to its fork. Blood upstream of it comes from the lungs,
/// downstream from the membrane lung (or the other way round with a return into an axillary artery).
/// </summary>
/// <param name="Place">Where the middle of the zone lies, on average over the beat.</param>
/// <param name="PlaceInWords">The same as a sentence part, such as "in the aortic arch, before the left carotid".</param>
/// <param name="HalfCm">Distance from the aortic valve at which half the blood is from the membrane lung, over the beat, cm.</param>
/// <param name="NearEdgeCm">Least distance over the beat at which the share of membrane blood is a tenth, cm.</param>
/// <param name="FarEdgeCm">Greatest distance over the beat at which the share of membrane blood is nine tenths, cm.</param>
/// <param name="MeanHalfCm">Mean of the half place with the interval from the uncertain inputs that were varied, cm.</param>
/// <param name="AortaCm">Length of the aorta from valve to fork in this patient, cm.</param>
/// <param name="HalfOnDrawing">The half place of the mean on the drawing; null where there is none in the aorta.</param>
public sealed record MixingZone(
    MixingPlace Place,
    string PlaceInWords,
    OverBeat HalfCm,
    double NearEdgeCm,
    double FarEdgeCm,
    Estimate MeanHalfCm,
    double AortaCm,
    LayoutPoint? HalfOnDrawing);
