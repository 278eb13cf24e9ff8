/// What weather might this place have, hour by hour?
///
/// In: monthly [Normals], or an [HourlyFile]. Out: [Weather] of any number of years, made by [WeatherMaker] from a random state that is handed in. Units: °C, mm, m/s, humidity as a fraction. Read
/// first: [WeatherMaker].
///
/// It has the normals' means and wet days; it forecasts nothing. Sun, the direction of the wind, melting snow, and dry or wet years that last longer than weather's memory of some days are not in it.
package sillwright.wood.weather;
