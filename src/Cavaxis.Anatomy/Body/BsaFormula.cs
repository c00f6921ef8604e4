namespace Cavaxis.Anatomy.Body;

/// <summary>Formula for the body surface area.</summary>
public enum BsaFormula
{
    /// <summary>DuBois and DuBois 1916: 0.007184 H^0.725 W^0.425.</summary>
    DuBois,

    /// <summary>Mosteller 1987: √(H W / 3600). Taken for adults.</summary>
    Mosteller,

    /// <summary>Haycock and others 1978: 0.024265 H^0.3964 W^0.5378. Fitted from newborn to adult; taken under 18
    /// years.</summary>
    Haycock,
}
