using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class DesignConfiguration : IEntityTypeConfiguration<Design>
{
    public void Configure(EntityTypeBuilder<Design> design)
    {
        design.ToTable("Designs");
        design.Property(it => it.Id).ValueGeneratedNever();
        design.Property(it => it.Title).HasMaxLength(Design.TitleLength);
        design.Property(it => it.TitleKey).HasMaxLength(Design.TitleLength);
        design.Property(it => it.State).HasConversion<string>().HasMaxLength(20);
        design.Property(it => it.RowVersion).IsConcurrencyToken();
        design.HasOne<Studio>().WithMany().HasForeignKey(it => it.StudioId).OnDelete(DeleteBehavior.Restrict);
        design.HasOne<Swatch>().WithMany().HasForeignKey(it => it.SwatchId).OnDelete(DeleteBehavior.Restrict);
        design.HasOne<Yarn>().WithMany().HasForeignKey(it => it.YarnId).OnDelete(DeleteBehavior.Restrict);
        design.HasOne<Photo>().WithMany().HasForeignKey(it => it.PhotoId).OnDelete(DeleteBehavior.Restrict);
        // The list counts a studio's designs by state and turns their pages by date or title: from the indexes alone, for the rows hold whole texts.
        design.HasIndex(it => new { it.StudioId, it.Deleted, it.Updated, it.Id });
        design.HasIndex(it => new { it.StudioId, it.Deleted, it.State });
        design.HasIndex(it => new { it.StudioId, it.Deleted, it.TitleKey, it.Id });
    }
}
