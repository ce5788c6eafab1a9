const earthRadiusKm = 6371.0088;

/**
 * Great-circle distance between two points given in degrees, km, by the haversine formula on a sphere of the mean radius
 * 6371.0088 km (WGS 84 mean radius, Moritz 1980); within 0.6 % of the ellipsoid.
 */
export function distanceKm(
  from: { readonly latitude: number; readonly longitude: number },
  to: { readonly latitude: number; readonly longitude: number },
): number {
  const radians = Math.PI / 180;
  const halfLatitude = Math.sin(((to.latitude - from.latitude) * radians) / 2);
  const halfLongitude = Math.sin(((to.longitude - from.longitude) * radians) / 2);
  const h =
    halfLatitude ** 2 + Math.cos(from.latitude * radians) * Math.cos(to.latitude * radians) * halfLongitude ** 2;
  return 2 * earthRadiusKm * Math.asin(Math.min(1, Math.sqrt(h)));
}
