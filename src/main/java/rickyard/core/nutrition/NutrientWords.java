package rickyard.core.nutrition;

import java.util.Locale;

/** The names of nutrients inside a sentence. */
final class NutrientWords {
  private NutrientWords() {}

  static String of(Nutrient nutrient) {
    return switch (nutrient) {
      case DM -> "dry matter";
      case DE -> "energy";
      case CP -> "protein";
      case LYS -> "lysine";
      case CA -> "calcium";
      case P -> "phosphorus";
      case MG -> "magnesium";
      case K -> "potassium";
      case NA -> "sodium";
      case CL -> "chlorine";
      case S -> "sulphur";
      case CO -> "cobalt";
      case CU -> "copper";
      case I -> "iodine";
      case FE -> "iron";
      case MN -> "manganese";
      case SE -> "selenium";
      case ZN -> "zinc";
      case VIT_A -> "vitamin A";
      case VIT_D -> "vitamin D";
      case VIT_E -> "vitamin E";
      case THIAMIN, RIBOFLAVIN -> nutrient.name().toLowerCase(Locale.ROOT);
      case CA_P -> "calcium to phosphorus";
    };
  }
}
